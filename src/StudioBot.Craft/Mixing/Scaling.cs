using StudioBot.Craft.Pours;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Mixing;

/// <summary>Brings a recipe to another size; every part grows alike.</summary>
public static class Scaling
{
    /// <summary>To a total volume.</summary>
    /// <param name="recipe">What is scaled.</param>
    /// <param name="total">All parts together, volumes adding up.</param>
    /// <param name="densityOf">A material's density; null where the studio doesn't know it.</param>
    /// <returns>Undetermined, with the material's name, where a weighed part's density is unknown.</returns>
    public static Finding<IReadOnlyList<ScaledPart>> To(
        Recipe recipe, Volume total, Func<string, Density?> densityOf) =>
        To(recipe, RatioBy.Volume, total.Millilitres, densityOf);

    /// <summary>To a total mass.</summary>
    /// <param name="recipe">What is scaled.</param>
    /// <param name="total">All parts together.</param>
    /// <param name="densityOf">A material's density; null where the studio doesn't know it.</param>
    /// <returns>Undetermined, with the material's name, where a measured part's density is unknown.</returns>
    public static Finding<IReadOnlyList<ScaledPart>> To(
        Recipe recipe, Mass total, Func<string, Density?> densityOf) =>
        To(recipe, RatioBy.Mass, total.Grams, densityOf);

    /// <summary>To what a technique needs on these surfaces, run-off and a cup's waste included.</summary>
    /// <param name="recipe">Poured from one cup.</param>
    /// <param name="technique">How it is poured.</param>
    /// <param name="surfaces">What it is poured on.</param>
    /// <param name="densityOf">A material's density; null where the studio doesn't know it.</param>
    /// <returns>As for a total volume.</returns>
    public static Finding<IReadOnlyList<ScaledPart>> To(
        Recipe recipe, Technique technique, SurfaceSet surfaces, Func<string, Density?> densityOf)
    {
        var amounts = PourAmounts.For(technique, surfaces, colours: 1);
        return To(recipe, amounts.Need + PourAmounts.WasteOfACup, densityOf);
    }

    private static Finding<IReadOnlyList<ScaledPart>> To(
        Recipe recipe, RatioBy by, double total, Func<string, Density?> densityOf)
    {
        var weighed = recipe.Parts
            .Select(part => (Part: part, Size: Size(part, by, densityOf(part.Material))))
            .ToList();
        if (weighed.Find(pair => pair.Size is null).Part is { } unknown)
        {
            return new Finding<IReadOnlyList<ScaledPart>>.None(
                NoFigure.Undetermined,
                $"the density of {unknown.Material} is not known",
                $"Weigh a measured spoon of {unknown.Material} and set its density.");
        }

        var times = total / weighed.Sum(pair => pair.Size!.Value);
        return new Finding<IReadOnlyList<ScaledPart>>.Found(
            [.. recipe.Parts.Select(part => Scaled(part, times, densityOf(part.Material)))]);
    }

    // What the part takes of the total; null where that needs a density nobody knows.
    private static double? Size(Part part, RatioBy by, Density? density) => (part.By, by, density) switch
    {
        var (own, wanted, _) when own == wanted => part.Amount,
        (RatioBy.Mass, _, { } known) => (Mass.FromGrams(part.Amount) / known).Millilitres,
        (RatioBy.Volume, _, { } known) => (Volume.FromMillilitres(part.Amount) * known).Grams,
        _ => null,
    };

    private static ScaledPart Scaled(Part part, double times, Density? density)
    {
        if (part.By == RatioBy.Volume)
        {
            var volume = Volume.FromMillilitres(part.Amount * times);
            return new ScaledPart(part.Material, volume, density is { } known ? volume * known : null);
        }

        var mass = Mass.FromGrams(part.Amount * times);
        return new ScaledPart(part.Material, density is { } weighs ? mass / weighs : null, mass);
    }
}
