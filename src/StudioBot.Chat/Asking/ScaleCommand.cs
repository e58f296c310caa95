using StudioBot.Chat.Learning;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Pours;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using Recipe = StudioBot.Craft.Mixing.Recipe;

namespace StudioBot.Chat.Asking;

/// <summary><c>scale ocean to 400 ml</c>: a recipe at another size.</summary>
internal sealed class ScaleCommand : Ask
{
    // Beyond this a mixture no longer looks like its recipe (common practice).
    private const double Rough = 0.1;

    private static readonly NameSlot Saved = new(NameKind.Recipe, "recipe", "a recipe", "ocean") { IsRequired = true };
    private static readonly SurfaceSlot Size = new();
    private static readonly NameSlot Way = new(NameKind.Technique, "technique", "a technique", "bloom");
    private static readonly AmountSlot Total = new("a size", "to 400 ml");
    private static readonly ChoiceSlot Detail = new("", "a detail", ["exact"]);

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "scale", Room.Asking, "A recipe at another size.",
        [Saved, Size, Way, Total, Detail],
        ["scale ocean to 400 ml", "scale ocean for 40cm round"])
    {
        More = "Rounded to the tools; for a surface by your own pours, as amounts.",
        Also = ["rescale"],
        Cues =
        [
            new("{recipe} {size}"),
            new("{recipe} {amount}"),
        ],
    };

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said)
    {
        if (said.Has(Size))
        {
            return said.Has(Total)
                ? new Misread(
                    TypedWords.Amount(said, said.Of(Total)),
                    "stands beside a surface: one of the two says the size",
                    Sheet.Examples[0])
                : null;
        }

        if (!said.Has(Total))
        {
            return new Misread("", "the size is missing: to so many ml, or for a surface", Sheet.Examples[0]);
        }

        return TypedWords.Of(said)
            .FirstOrDefault(word => SurfaceWords.Shape(word.ToLowerInvariant()) is not null) is { } shape
            ? new Misread(
                $"{TypedWords.Amount(said, said.Of(Total))} {shape}",
                $"is {(said.Of(Total) is Amount.ByMass ? "a mass" : "a volume")} where a surface's size is needed",
                Sheet.Examples[1])
            : null;
    }

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var recipe = InParts(studio.View.Recipes.All().First(one => one.Name == said.Of(Saved)));
        var densities = Densities(studio);
        var technique = studio.Technique(said.Has(Way) ? said.Of(Way) : null);
        var learnt = said.Has(Size) ? StudioFilms.Of(technique, said.Of(Size), turn.Member?.Name, studio) : null;
        var scaled = said.Has(Size)
            ? For(recipe, technique, learnt, said, studio)
            : said.Of(Total) switch
            {
                Amount.ByMass mass => Scaling.To(recipe, mass.Mass, name => densities.GetValueOrDefault(name)),
                Amount.ByVolume volume => Scaling.To(recipe, volume.Volume, name => densities.GetValueOrDefault(name)),
                _ => throw new InvalidOperationException("A recipe is scaled to a volume or a mass."),
            };
        return scaled switch
        {
            Finding<IReadOnlyList<ScaledPart>>.Found found => Scaled(recipe, found.Value, learnt, said, studio),
            Finding<IReadOnlyList<ScaledPart>>.None none =>
                new Reply(new Block.Headline($"No figure: {none.Why}."), new Block.Line(none.Instead))
                {
                    IsTrouble = true,
                },
            _ => throw new InvalidOperationException("A recipe is scaled or it is not."),
        };
    }

    // One cup, by the own pours where there are any.
    private static Finding<IReadOnlyList<ScaledPart>> For(
        Recipe recipe, Technique technique, LearntNeed? learnt, Phrase said, Studio studio)
    {
        var densities = Densities(studio);
        return learnt is null
            ? Scaling.To(recipe, technique, said.Of(Size), name => densities.GetValueOrDefault(name))
            : Scaling.To(
                recipe,
                studio.Amounts(technique, said.Of(Size), 1, learnt).Need + PourAmounts.WasteOfACup,
                name => densities.GetValueOrDefault(name));
    }

    private static Dictionary<string, Density?> Densities(Studio studio) =>
        studio.View.Materials.All().ToDictionary(material => material.Name, material => material.Density);

    private static Reply Scaled(
        Recipe recipe, IReadOnlyList<ScaledPart> exact, LearntNeed? learnt, Phrase said, Studio studio)
    {
        var tools = studio.Practice.Pours.Tools;
        var rounded = RoundedRecipe.Of(
            recipe, exact, tools.Spoon.Value, tools.SyringeStep.Value, tools.ScaleDivision.Value);
        var isExact = said.Has(Detail);
        var wanted = said.Has(Size)
            ? new Amount.ByVolume(exact.Aggregate(default(Volume), (sum, part) => sum + part.Volume!.Value))
            : said.Of(Total);
        List<Block> blocks =
        [
            new Block.Headline(
                $"{recipe.Name}, {Round(wanted, isExact ? 1 : rounded.Growth)}{(isExact ? " before rounding" : "")}"),
            FitRows.Of([.. (isExact ? exact : rounded.Parts)
                .Select((part, i) => new Figure(part.Material, Measured(part, recipe.Parts[i].By)))]),
            new Block.Line((isExact ? "As reckoned: no tool measures so finely." : Rounding(rounded, tools, wanted))
                + (studio.IsSample ? " (Invented studio.)" : "")),
        ];
        if (said.Has(Size))
        {
            blocks.Add(new Block.Line(Surface(said, learnt, studio)));
        }

        if (recipe.Parts.Any(part => part.By == RatioBy.Mass) && !isExact)
        {
            blocks.Add(Cautions.InAWord(studio, SafetySubject.Powder));
        }

        var line = said.Line;
        return new Reply(blocks, isExact
            ? [new Button("Rounded again", line.Replace(" exact", "", StringComparison.Ordinal))]
            : [new Button("Before rounding", line + " exact")]);
    }

    private static string Rounding(RoundedRecipe rounded, PourTools tools, Amount wanted) =>
        $"Rounded to {Show.Volume(rounded.Step)}, {Show.Mass(tools.ScaleDivision.Value)}: "
        + (rounded.WorstError < 0.0005 ? "recipe kept" : $"off by {Show.Number(rounded.WorstError * 100)} %")
        + (rounded.Growth > 1.005 ? $", {Show.Number((rounded.Growth - 1) * 100)} % over {Round(wanted, 1)}." : ".")
        + (rounded.WorstError > Rough ? " Make more, it is too little for these tools." : "");

    private static string Surface(Phrase said, LearntNeed? learnt, Studio studio)
    {
        var technique = studio.Technique(said.Has(Way) ? said.Of(Way) : null);
        return $"{Show.Surfaces(said.Of(Size))}, {technique.Name}{(said.Has(Way) ? "" : " taken")}: "
            + (learnt is null
                ? $"{Show.Film(technique.Laid.Usual)} film and run-off, common practice."
                : $"by {learnt.Pours}, enough 4 times of 5.");
    }

    private static string Measured(ScaledPart part, RatioBy by) =>
        by == RatioBy.Volume ? Show.Volume(part.Volume!.Value) : Show.OnScale(part.Mass!.Value);

    private static string Round(Amount amount, double times) => amount switch
    {
        Amount.ByVolume volume => Whole(volume.Volume.Millilitres * times) + " ml",
        Amount.ByMass mass => Whole(mass.Mass.Grams * times) + " g",
        _ => throw new InvalidOperationException("A recipe is scaled to a volume or a mass."),
    };

    private static string Whole(double figure) => Show.Number(figure, figure < 100 ? 1 : 0);

    private static Recipe InParts(Records.Recipes.Recipe saved) =>
        new(saved.Name, [.. saved.Parts.Select(part => part.Amount switch
    {
        Amount.ByMass mass => new Part(part.Material, mass.Mass.Grams, RatioBy.Mass),
        Amount.ByVolume volume => new Part(part.Material, volume.Volume.Millilitres),
        _ => throw new InvalidOperationException($"{part.Material} is counted: no part of a mixture."),
    })]);
}
