using StudioBot.Craft.Units;

namespace StudioBot.Craft.Mixing;

/// <summary>A scaled recipe in steps that tools can measure, and what the rounding costs.</summary>
/// <param name="Parts">In the recipe's order, each by the one measure that the recipe counts it in.</param>
/// <param name="Step">What its liquids come in whole steps of.</param>
/// <param name="Growth">How many times the size asked for it comes to: 1 or a little more, to be enough.</param>
/// <param name="WorstError">The worst over pairs of parts, as a fraction; 0 where the recipe is kept.</param>
public sealed record RoundedRecipe(IReadOnlyList<ScaledPart> Parts, Volume Step, double Growth, double WorstError)
{
    // A coarse tool that keeps the recipe this well, for this much more than a fine one needs, is the quicker to
    // measure with (common practice).
    private const double Near = 0.02;
    private const double More = 1.05;

    /// <summary>Rounds the liquids together, then grows the powders with them and rounds those to the scale.</summary>
    /// <param name="recipe">Which says how each part is counted.</param>
    /// <param name="scaled">Its parts at the size wanted, in its order.</param>
    /// <param name="coarse">The step taken where it keeps the recipe within 2 % and costs little; above zero.</param>
    /// <param name="fine">The step taken otherwise; above zero.</param>
    /// <param name="division">The scale's; above zero.</param>
    /// <exception cref="ArgumentException">Not as many scaled parts as the recipe has.</exception>
    public static RoundedRecipe Of(
        Recipe recipe, IReadOnlyList<ScaledPart> scaled, Volume coarse, Volume fine, Mass division)
    {
        if (scaled.Count != recipe.Parts.Count)
        {
            throw new ArgumentException("A size for each part of the recipe.", nameof(scaled));
        }

        Volume[] liquids =
        [
            .. scaled.Where((_, i) => recipe.Parts[i].By == RatioBy.Volume).Select(part => part.Volume!.Value),
        ];
        var (rounded, step) = Liquids(liquids, coarse, fine);
        var growth = liquids.Length > 0 ? Sum(rounded) / Sum(liquids) : 1;
        var next = 0;
        ScaledPart[] parts =
        [
            .. scaled.Select((part, i) => recipe.Parts[i].By == RatioBy.Volume
                ? new ScaledPart(part.Material, rounded[next++], null)
                : new ScaledPart(part.Material, null, OnScale(part.Mass!.Value * growth, division))),
        ];
        double[] off = [.. parts.Zip(scaled, Off)];
        return new RoundedRecipe(parts, step, growth, off.Max() / off.Min() - 1);
    }

    private static (IReadOnlyList<Volume> Rounded, Volume Step) Liquids(Volume[] exact, Volume coarse, Volume fine)
    {
        if (exact.Length < 2)
        {
            return ([.. exact.Select(volume => Math.Max(1, Math.Ceiling(Math.Round(volume / fine, 6))) * fine)], fine);
        }

        var ratio = new MixRatio([.. exact.Select(volume => volume.Millilitres)]);
        var byCoarse = ToolRounding.Of(ratio, Sum(exact), coarse);
        var byFine = ToolRounding.Of(ratio, Sum(exact), fine);
        return byCoarse.WorstError <= Near && byCoarse.Total <= byFine.Total * More
            ? (byCoarse.Parts, coarse)
            : (byFine.Parts, fine);
    }

    private static double Off(ScaledPart rounded, ScaledPart exact) => rounded.Volume is { } volume
        ? volume / exact.Volume!.Value
        : rounded.Mass!.Value / exact.Mass!.Value;

    private static Mass OnScale(Mass mass, Mass division) => Math.Max(1, Math.Round(mass / division)) * division;

    private static Volume Sum(IReadOnlyList<Volume> volumes) =>
        volumes.Aggregate(default(Volume), (sum, volume) => sum + volume);
}
