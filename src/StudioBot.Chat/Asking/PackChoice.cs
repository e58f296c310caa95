using StudioBot.Craft.Costs;
using StudioBot.Craft.Stock;
using StudioBot.Records.Materials;
using CraftPack = StudioBot.Craft.Stock.Pack;

namespace StudioBot.Chat.Asking;

/// <summary>So much of a material in whole packs: the cheapest that cover it.</summary>
/// <param name="Words">2 x 250 ml; the amount alone where no pack is known.</param>
/// <param name="Cost">All of them; none where a price is not known.</param>
/// <param name="Surplus">What they hold beyond the need, in the material's own unit; none without packs.</param>
internal sealed record PackChoice(string Words, Money? Cost, double? Surplus)
{
    // More than any list of packs is for.
    private const double MostUnits = 200_000;

    // What sums of doubles leave behind is no need of another whole unit.
    private const int Digits = 6;

    /// <summary>The packs for a need above zero. Where no price is known, those that leave least over.</summary>
    public static PackChoice Of(Need need)
    {
        List<Records.Materials.Pack> known =
            [.. need.Material.Packs.Where(pack => Need.UnitsOf(pack.Holds) is >= 1 and <= int.MaxValue)];
        List<Records.Materials.Pack> priced = [.. known.Where(pack => pack.Price is not null)];
        List<CraftPack> packs = [.. (priced.Count > 0 ? priced : known)
            .Select(pack => new CraftPack((int)Need.UnitsOf(pack.Holds), pack.Price ?? default))];
        if (packs.Count == 0 || need.Units > MostUnits)
        {
            return new PackChoice(Measured(need), null, null);
        }

        var whole = (long)Math.Ceiling(Math.Round(need.Units, Digits));
        var purchase = ShoppingList.Cover(whole, packs);
        var bought = purchase.Counts.Zip(packs)
            .Where(pair => pair.First > 0)
            .Select(pair => $"{pair.First} x {Measured(need with { Units = pair.Second.Size })}");
        return new PackChoice(
            string.Join(" + ", bought),
            priced.Count > 0 ? purchase.Cost : null,
            purchase.Surplus + whole - need.Units);
    }

    /// <summary>A need as tools measure it.</summary>
    public static string Measured(Need need) => need.Amount is Amount.ByVolume volume
        ? Replies.Show.ToMeasure(volume.Volume)
        : Replies.Show.Amount(need.Amount);
}
