using StudioBot.Chat.Asking;
using StudioBot.Chat.Learning;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using StudioBot.Records.Recipes;

namespace StudioBot.Chat.House;

/// <summary><c>recipe ocean</c>: a recipe's parts.</summary>
internal sealed class RecipeShow : Ask
{
    private const int MostButtons = 4;

    private static readonly NameSlot Recipe = new(NameKind.Recipe, "recipe", "a recipe", "ocean");

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "recipe", Room.House, "A recipe's parts.",
        [RowPages.Page, Recipe],
        ["recipe ocean", "recipe"])
    {
        More = "With what is known to go wrong with them, and a picture to hand on; of a base and its varnish "
            + "the ratio for today's warmth, your own once three batches were read; recipe alone: all recipes.",
        Also = ["recipes"],
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var all = studio.View.Recipes.All();
        return said.Has(Recipe)
            ? Parts(all.First(recipe => recipe.Name == said.Of(Recipe)), said, turn, studio)
            : List(all, said, studio);
    }

    private static Reply List(IReadOnlyList<Recipe> recipes, Phrase said, Studio studio)
    {
        if (recipes.Count == 0)
        {
            return new Reply(new Block.Headline("No recipe is saved here yet"));
        }

        return RowPages.Of(
            recipes.Count == 1 ? "1 recipe" : $"{recipes.Count} recipes",
            [],
            [new RowGroup("", [.. recipes.Select(recipe => new Figure(
                recipe.Name, $"{Size(recipe)}{Count(recipe)}"))])],
            studio.IsSample ? [new Block.Line(Sentences.Invented(studio).Trim())] : [],
            said,
            [
                .. recipes.Take(MostButtons)
                    .Select(recipe => new Button(Labels.Short(recipe.Name), $"recipe {recipe.Name}")),
            ]);
    }

    private static Reply Parts(Recipe recipe, Phrase said, Turn turn, Studio studio)
    {
        var use = recipe.Makes is { } made ? $"Makes {made}, which goes into stock." : "Goes straight into a pour.";
        List<Block> below =
        [
            .. RecipeHazards.Of(recipe.Parts, studio),
            .. RatioToday.Of(recipe, turn, studio) is { } today ? [today] : (Block[])[],
            new Block.Line(use + Sentences.Invented(studio)),
        ];
        if (recipe.Parts.Any(part => part.Amount is Amount.ByMass))
        {
            below.Add(Cautions.InAWord(studio, SafetySubject.Powder));
        }

        var title = $"{Sentences.Capital(recipe.Name)}: {Size(recipe)}{Count(recipe)}";
        return RowPages.Of(
            title,
            [],
            [new RowGroup("", [.. recipe.Parts.Select(part => new Figure(part.Material, Show.Amount(part.Amount)))])],
            below,
            said,
            [
                .. Poured(recipe) is { Millilitres: > 0 } poured
                    ? (Button[])[new Button("Twice as much", $"scale {recipe.Name} to {Show.Volume(poured * 2)}")]
                    : [],
                new Button("All recipes", "recipe"),
            ]) with
        {
            File = RecipeSketch.Of(recipe, title),
        };
    }

    // Powders hardly add to the volume of a mixture.
    private static Volume Poured(Recipe recipe) => recipe.Parts
        .Select(part => part.Amount)
        .OfType<Amount.ByVolume>()
        .Aggregate(default(Volume), (sum, part) => sum + part.Volume);

    private static string Size(Recipe recipe) =>
        Poured(recipe) is { Millilitres: > 0 } poured ? Show.Volume(poured) + ", " : "";

    private static string Count(Recipe recipe) => recipe.Parts.Count == 1 ? "1 part" : $"{recipe.Parts.Count} parts";
}
