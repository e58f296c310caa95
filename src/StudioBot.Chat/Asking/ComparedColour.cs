using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Costs;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Asking;

/// <summary>One side of a comparison, ready to be reckoned.</summary>
/// <param name="Name">As the reply calls it.</param>
/// <param name="Price">What it costs in use.</param>
/// <param name="Spoon">What a millilitre of its spoon was taken to weigh; none where no spoon was meant.</param>
/// <param name="IsLiquid">Whether its dose is poured.</param>
/// <param name="Dose">The dose as the reply says it.</param>
internal sealed record ComparedColour(string Name, ColourPrice Price, Density? Spoon, bool IsLiquid, string Dose)
{
    private static readonly Volume Hundred = Volume.FromMillilitres(100);

    // A paint in medium; how much colours alike is for the maker's eye (common practice).
    private static readonly Volume PaintDose = Volume.FromMillilitres(20);
    private static readonly Volume Teaspoon = Volume.FromUsFluidOunces(1) / 6;

    /// <summary>Whether it is taken as it comes, and colours nothing.</summary>
    public bool IsNeat => IsLiquid && Price.Dose / ColourPrice.OfLiquids >= Price.Per;

    /// <summary>A price for a pack with a dose.</summary>
    public static ComparedColour Of(Offer offer, string name, Studio studio)
    {
        var per = ((Amount.ByVolume)offer.Per!).Volume;
        var price = offer.Price!.Value;
        var dose = AmountWords.Say(offer.Dose!);
        return (offer.Pack, offer.Dose) switch
        {
            (Amount.ByVolume pack, Amount.ByVolume poured) =>
                new(name, ColourPrice.Liquid(price, pack.Volume, poured.Volume, per), null, true, dose),
            (Amount.ByMass pack, Amount.ByMass weighed) =>
                new(name, new ColourPrice(price, pack.Mass, weighed.Mass, per), null, false, dose),
            (Amount.ByMass pack, Amount.ByVolume spooned) =>
                new(
                    name,
                    new ColourPrice(price, pack.Mass, spooned.Volume * SpoonOf(studio), per),
                    SpoonOf(studio),
                    false,
                    Show.Number(spooned.Volume / Teaspoon, 2) + " tsp"),
            _ => throw new InvalidOperationException("The command's check lets no weighed dose of a poured pack pass."),
        };
    }

    /// <summary>A material of the studio, at its price here and a usual dose; none where it has no price.</summary>
    public static ComparedColour? Of(string material, Studio studio)
    {
        var found = studio.View.Materials.All().First(one => one.Name == material);
        if (StockCost.PerThousand(found, studio) is not { } price)
        {
            return null;
        }

        if (found.Form == MaterialForm.Powder)
        {
            var powder = Hundred * studio.Practice.Pours.PowderPerMedium.Value;
            return new(
                material,
                new ColourPrice(price, Mass.FromKilograms(1), powder, Hundred),
                null,
                false,
                Show.Mass(powder));
        }

        var isColour =
            studio.Practice.Materials.FirstOrDefault(one => one.Name == material)?.Kind is MaterialKind.Paint or null;
        var dose = isColour && found.Form == MaterialForm.Liquid ? PaintDose : Hundred;
        return new(
            material,
            ColourPrice.Liquid(price, Volume.FromLitres(1), dose, Hundred),
            null,
            true,
            Show.Volume(dose));
    }

    /// <summary>The dose of this at which <paramref name="other"/> costs as much, in its own measure; none where this
    /// costs nothing.</summary>
    public string? EqualTo(ComparedColour other) => other.Price.BreakEven(Price) is Craft.Finding<Mass>.Found(var dose)
        ? Measured(dose)
        : null;

    private string Measured(Mass dose) => this switch
    {
        { IsLiquid: true } => Show.Number((dose / ColourPrice.OfLiquids).Millilitres, 2) + " ml",
        { Spoon: { } spoon } => Show.Number(dose / spoon / Teaspoon, 2) + " tsp",
        _ => Show.Number(dose.Grams, 2) + " g",
    };

    // What a level teaspoon of the trade's first powder weighs stands for any powder that nobody weighed.
    private static Density SpoonOf(Studio studio) =>
        studio.Practice.Materials.Select(one => one.GramsPerTeaspoon).OfType<Sourced<Mass>>().First().Value / Teaspoon;
}
