using StudioBot.Chat.Asking;
using StudioBot.Chat.Pictures;
using StudioBot.Chat.Replies;
using StudioBot.Records.Materials;
using StudioBot.Records.Recipes;

namespace StudioBot.Chat.House;

/// <summary>What the picture of a recipe shows, out of the records.</summary>
internal static class RecipeSketch
{
    /// <summary>The picture.</summary>
    /// <param name="recipe">Which.</param>
    /// <param name="title">What stands above it.</param>
    public static ReplyFile Of(Recipe recipe, string title) =>
        ReplyFile.Picture("recipe.png", () => RecipePicture.Png(Figures(recipe, title)));

    /// <summary>What it shows.</summary>
    /// <inheritdoc cref="Of"/>
    public static RecipeFigures Figures(Recipe recipe, string title)
    {
        // Powders hardly add to the volume of a mixture: by mass only where there is nothing but powder.
        var isByVolume = recipe.Parts.Any(part => part.Amount is Amount.ByVolume);
        var whole = recipe.Parts.Where(IsOfTheWhole).Sum(part => Need.UnitsOf(part.Amount));
        return new RecipeFigures(
            title,
            isByVolume ? "Shares by volume." : "Shares by mass.",
            [.. recipe.Parts.Select(part => new RecipeShare(
                part.Material,
                Show.Amount(part.Amount),
                IsOfTheWhole(part) && whole > 0 ? Need.UnitsOf(part.Amount) / whole : null))]);

        bool IsOfTheWhole(Part part) => !isByVolume || part.Amount is Amount.ByVolume;
    }
}
