using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.House;

/// <summary><c>material new pearl white 500 ml 14.00</c>: a new material.</summary>
internal sealed class MaterialNew : Act
{
    private static readonly NewNameSlot Name = new("material", "a name", "new pearl white")
    {
        Lead = "new",
        Until = "as",
        IsRequired = true,
    };

    private static readonly AmountSlot Pack = new("a pack", "500 ml") { Key = "pack" };
    private static readonly CountSlot Pieces = new("pack_pieces", "a pack", ["pieces", "piece", "pcs"], 100_000);
    private static readonly ChoiceSlot Kind = new("form", "a kind", ["resin", "hardener", "mixture"])
    {
        Leads = ["as"],
    };

    private static readonly MoneySlot Price = new();

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "material", Room.House, "A new material.",
        [Name, Pieces, Pack, Kind, Price],
        ["material new pearl white 500 ml 14.00", "material new foil 100 pieces 8.00"])
    {
        StewardsOnly = true,
    };

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var name = said.Of(Name);
        if (writing.Session.Materials.All()
            .FirstOrDefault(one => one.Name.Equals(name, StringComparison.OrdinalIgnoreCase)) is { } known)
        {
            return OwnMeasure.Trouble(
                $"“{name}” is a material here already",
                "Set what is known of it, or call the new one otherwise:",
                $"material {known.Name} low 300 ml",
                writing);
        }

        if (FormOf(said) is not { } form)
        {
            return OwnMeasure.Trouble(
                said.Has(Pack)
                    ? $"“{AmountWords.Say(said.Of(Pack))}” is no pack of a liquid"
                    : "How it is measured is missing",
                "A pack says it: ml of a liquid, g of a powder, pieces of what is counted:",
                $"material new {name} 500 ml",
                writing);
        }

        if (said.Has(Price) && Prices.Against(said.Of(Price), Sheet.Examples[0], writing) is { } refused)
        {
            return refused;
        }

        IReadOnlyList<Pack> packs = Holds(said) is { } holds
            ? [new Pack(holds, said.Has(Price) ? said.Of(Price).Sum : null)]
            : [];
        var trade = writing.Practice.Materials
            .FirstOrDefault(one => one.Name.Equals(name, StringComparison.OrdinalIgnoreCase));
        var material = writing.Session.Materials.Add(
            new NewMaterial(name, form)
            {
                Density = trade?.Density?.Value,
                GramsPerTeaspoon = form == MaterialForm.Powder ? trade?.GramsPerTeaspoon?.Value : null,
                SolidsShare = trade?.Solids?.Value,
                Packs = packs,
            },
            writing.Act);
        return Named(material, writing);
    }

    private static Amount? Holds(Phrase said) => said.Has(Pieces) ? new Amount.ByCount(said.Of(Pieces))
        : said.Has(Pack) ? said.Of(Pack)
        : null;

    // What it is called, else how its pack is measured; a liquid by weight would need a density first.
    private static MaterialForm? FormOf(Phrase said)
    {
        var holds = Holds(said);
        return said.Or(Kind, "") switch
        {
            "resin" => holds is null or Amount.ByVolume ? MaterialForm.ResinA : null,
            "hardener" => holds is null or Amount.ByVolume ? MaterialForm.HardenerB : null,
            "mixture" => holds is null or Amount.ByVolume ? MaterialForm.Mixture : null,
            _ => holds switch
            {
                Amount.ByVolume => MaterialForm.Liquid,
                Amount.ByMass => MaterialForm.Powder,
                Amount.ByCount => MaterialForm.Counted,
                _ => null,
            },
        };
    }

    private static Reply Named(Material material, Writing writing)
    {
        var kind = material.Form switch
        {
            MaterialForm.Powder => "a powder, kept in g",
            MaterialForm.Counted => "counted",
            MaterialForm.Mixture => "mixed here, kept in ml",
            MaterialForm.ResinA => "a resin's part A, kept in ml",
            MaterialForm.HardenerB => "a resin's part B, kept in ml",
            _ => "a liquid, kept in ml",
        };
        var pack = material.Packs is [var sold]
            ? $" Sold by {Show.Amount(sold.Holds)}{(sold.Price is { } price ? $" for {price}" : "")}."
            : "";
        var next = (material.Form, material.Density, material.GramsPerTeaspoon) switch
        {
            (MaterialForm.Counted, _, _) => $"material {material.Name} low 20",
            (MaterialForm.Powder, _, null) => $"material {material.Name} spoon 2.2 g",
            (MaterialForm.Powder, _, _) => $"material {material.Name} low 20 g",
            (_, null, _) => $"material {material.Name} density 1.05",
            _ => $"material {material.Name} low 300 ml",
        };
        return new Reply(
            new Block.Headline($"{Sentences.Capital(material.Name)} is a material now: {kind}."),
            new Block.Line($"Nothing of it is on the shelf.{pack} To set next:"),
            new Block.Sample(Typed.In(writing.Turn, next)));
    }
}
