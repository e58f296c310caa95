using StudioBot.Craft.Units;

namespace StudioBot.Craft.Pours;

/// <summary>Tells figures of pours that are slips of typing from those that are only unusual.</summary>
/// <remarks>Pours scatter by half, slips of a digit by ten: what is more than three times the median, or less than a
/// third of it, is none of the others' kind (common practice). Nothing else is cut off.</remarks>
public static class PourSlips
{
    // Before the studio's own pours are enough for a median, what is believed stands for it, with more room.
    private const int EnoughForMedian = 4;
    private const double FromMedian = 3;
    private const double FromBelief = 4;

    /// <summary>Which of these figures can't be right.</summary>
    /// <param name="used">What each of the pours took per face.</param>
    /// <param name="believed">What is believed of the need without them.</param>
    /// <returns>For each, in order, whether it is taken for a slip.</returns>
    public static IReadOnlyList<bool> Among(IReadOnlyList<Length> used, Length believed)
    {
        List<double> possible = [.. used.Where(one => one >= Film.Thinnest && one <= Film.Thickest)
            .Select(one => one.Millimetres).Order()];
        var (middle, factor) = possible.Count < EnoughForMedian
            ? (believed.Millimetres, FromBelief)
            : (Median(possible), FromMedian);
        return [.. used.Select(one => one < Film.Thinnest || one > Film.Thickest
            || one.Millimetres > middle * factor || one.Millimetres < middle / factor)];
    }

    private static double Median(List<double> ordered) =>
        (ordered[(ordered.Count - 1) / 2] + ordered[ordered.Count / 2]) / 2;
}
