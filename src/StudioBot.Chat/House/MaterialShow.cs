using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.House;

/// <summary><c>material white</c>: what is known of a material.</summary>
internal sealed class MaterialShow : Ask
{
    private const int MostButtons = 4;

    private static readonly NamesSlot Material = new();

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "material", Room.House, "What is known of a material.",
        [RowPages.Page, Material],
        ["material white", "limit"])
    {
        More = "Density, packs and prices, low level; limit: the low level of all.",
        Also = ["materials", "limit", "limits"],
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var all = studio.View.Materials.All();
        if (!said.Has(Material))
        {
            return Limits(all, said, studio, []);
        }

        List<Material> wanted = [.. all.Where(material => said.Of(Material).Contains(material.Name))];
        return wanted is [var one]
            ? Known(one, said, studio)
            : Limits(wanted, said, studio, [.. wanted.Take(MostButtons)
                .Select(material => new Button(Labels.Short(material.Name), $"material {material.Name}"))]);
    }

    private static Reply Limits(
        IReadOnlyList<Material> materials, Phrase said, Studio studio, IReadOnlyList<Button> buttons)
    {
        if (materials.Count == 0)
        {
            return new Reply(new Block.Headline("No material was named here yet"));
        }

        return RowPages.Of(
            $"{(materials.Count == 1 ? "1 material" : $"{materials.Count} materials")}, and when each is low",
            [],
            [new RowGroup("", [.. materials.Select(material => new Figure(
                material.Name, material.Low is { } low ? $"at {Show.Amount(low)}" : "never"))])],
            studio.IsSample ? [new Block.Line(Sentences.Invented(studio).Trim())] : [],
            said,
            buttons);
    }

    private static Reply Known(Material material, Phrase said, Studio studio)
    {
        var currency = studio.View.Studio.Settings()?.Currency ?? "";
        List<(string Name, string? Value)> facts =
        [
            ("Density", material.Density is { } density ? Show.Number(density.GramsPerMillilitre, 3) + " g/ml" : null),
            ("Level teaspoon", material.GramsPerTeaspoon is { } spoon ? Show.Mass(spoon) : null),
            ("Stays when dry", material.SolidsShare is { } solids ? Show.Share(solids) : null),
            ("Low at", material.Low is { } low ? Show.Amount(low) : null),
            ("Empty bottle", material.Bottle is { } bottle ? Show.Mass(bottle) : null),
            ("Keeps once open", material.ShelfLife is { } life ? Days(life) : null),
            ("Order takes", material.LeadTime is { } lead ? Days(lead) : null),
        ];
        List<Figure> packs = [.. material.Packs.Select(pack => new Figure(
            $"Pack of {Show.Amount(pack.Holds)}",
            pack.Price is { } price ? $"{price} {currency}".TrimEnd() : "no price"))];
        List<string> unset = [.. facts
            .Where(fact => fact.Value is null && Fits(fact.Name, material.Form))
            .Select(fact => fact.Name)];
        if (packs.Count == 0 && material.Form != MaterialForm.Mixture)
        {
            unset.Add("Packs");
        }

        return RowPages.Of(
            $"{Sentences.Capital(material.Name)}: {Form(material.Form)}",
            [],
            [new RowGroup("", [
                .. facts.Where(fact => fact.Value is not null).Select(fact => new Figure(fact.Name, fact.Value!)),
                .. packs,
            ])],
            [new Block.Line(
                (unset.Count == 0 ? "All is set." : $"Not set: {string.Join(", ", unset).ToLowerInvariant()}.")
                + Sentences.Invented(studio))],
            said,
            [
                new Button(Labels.Short($"Stock {material.Name}"), $"stock {material.Name}"),
                new Button("All materials", "material"),
            ]);
    }

    // What nobody would set for it is not missed: a cup has no density, what is mixed here is not ordered.
    private static bool Fits(string fact, MaterialForm form) => fact switch
    {
        "Level teaspoon" => form == MaterialForm.Powder,
        "Density" or "Stays when dry" or "Empty bottle" => form != MaterialForm.Counted,
        "Order takes" => form != MaterialForm.Mixture,
        _ => true,
    };

    private static string Form(MaterialForm form) => form switch
    {
        MaterialForm.Liquid => "a liquid",
        MaterialForm.Powder => "a powder",
        MaterialForm.Counted => "counted",
        MaterialForm.Mixture => "mixed here",
        MaterialForm.ResinA => "part A of a resin",
        _ => "part B of a resin",
    };

    private static string Days(TimeSpan time) =>
        time.TotalDays == 1 ? "1 day" : $"{Show.Number(time.TotalDays, 0)} days";
}
