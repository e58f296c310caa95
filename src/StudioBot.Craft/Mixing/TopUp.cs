using StudioBot.Craft.Units;

namespace StudioBot.Craft.Mixing;

/// <summary>Completes a cup with the least addition: k = max(have_i/p_i), add_i = k·p_i − have_i.</summary>
/// <remarks>Mass balance. The part there is most of stays; the others are brought up to it.</remarks>
public static class TopUp
{
    /// <summary>By volume.</summary>
    /// <param name="ratio">By volume.</param>
    /// <param name="have">What of each part is in the cup, in the order of the ratio.</param>
    /// <param name="most">What the cup holds or the work needs. Where the least addition goes over it, so much of the
    /// stirred mixture is taken out first that the cup ends at it, and the answer carries a caution.</param>
    /// <param name="least">What the cup is to hold at least: the completed mixture is stretched to it.</param>
    /// <returns>No number for an empty cup: there the ratio and a total say it all.</returns>
    /// <exception cref="ArgumentException">Not as many amounts as parts, or a ratio by mass.</exception>
    public static Finding<Completion<Volume>> Complete(
        MixRatio ratio, IReadOnlyList<Volume> have, Volume? most = null, Volume? least = null)
    {
        Parts.Demand(ratio, RatioBy.Volume);
        return Complete(
            ratio,
            [.. have.Select(volume => volume.Millilitres)],
            most?.Millilitres,
            least?.Millilitres ?? 0,
            Volume.FromMillilitres);
    }

    /// <summary>By mass.</summary>
    /// <param name="ratio">By mass.</param>
    /// <param name="have">What of each part is in the cup, in the order of the ratio.</param>
    /// <param name="most">What the cup holds or the work needs, as for volumes.</param>
    /// <param name="least">What the cup is to hold at least, as for volumes.</param>
    /// <returns>No number for an empty cup.</returns>
    /// <exception cref="ArgumentException">Not as many amounts as parts, or a ratio by volume.</exception>
    public static Finding<Completion<Mass>> Complete(
        MixRatio ratio, IReadOnlyList<Mass> have, Mass? most = null, Mass? least = null)
    {
        Parts.Demand(ratio, RatioBy.Mass);
        return Complete(
            ratio, [.. have.Select(mass => mass.Grams)], most?.Grams, least?.Grams ?? 0, Mass.FromGrams);
    }

    private static Finding<Completion<T>> Complete<T>(
        MixRatio ratio, IReadOnlyList<double> have, double? most, double least, Func<double, T> amount)
    {
        if (have.Count != ratio.Parts.Count)
        {
            throw new ArgumentException("An amount for each part of the ratio, 0 where there is none.", nameof(have));
        }

        var times = have.Zip(ratio.Parts, (there, part) => there / part).Max();
        if (times <= 0)
        {
            return new Finding<Completion<T>>.None(
                NoFigure.Undetermined, "the cup is empty", "Name the total, and the ratio splits it.");
        }

        times = Math.Max(times, least / ratio.Whole);
        var total = times * ratio.Whole;
        var kept = most < total ? most.Value / total : 1;
        var completion = new Completion<T>(
            amount((1 - kept) * have.Sum()),
            [.. have.Zip(ratio.Parts, (there, part) => amount(kept * Math.Max(0, times * part - there)))],
            amount(kept * total));

        return kept < 1
            ? new Finding<Completion<T>>.Cautioned(completion, "more than fits or is needed: take some out first")
            : new Finding<Completion<T>>.Found(completion);
    }
}
