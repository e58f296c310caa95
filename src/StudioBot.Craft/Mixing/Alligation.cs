using StudioBot.Craft.Units;

namespace StudioBot.Craft.Mixing;

/// <summary>Brings a mixture of one strength to another by adding one liquid.</summary>
public static class Alligation
{
    /// <summary>How much to add: x = V₀·(c* − c₀)/(c_x − c*), a mass balance.</summary>
    /// <param name="have">What there is.</param>
    /// <param name="strength">Its strength, 0 to 1.</param>
    /// <param name="adding">The strength of what is added, 0 to 1.</param>
    /// <param name="target">The strength wanted, strictly between the two, or the one there is (nothing to
    /// add).</param>
    /// <returns>Wrong direction where the target does not lie between.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A strength outside 0 to 1.</exception>
    public static Finding<Volume> Add(Volume have, double strength, double adding, double target)
    {
        foreach (var share in new[] { strength, adding, target })
        {
            Shares.Demand(share, nameof(strength));
        }

        if (target == strength)
        {
            return new Finding<Volume>.Found(default);
        }

        return IsBetween(target, strength, adding)
            ? new Finding<Volume>.Found(have * ((target - strength) / (adding - target)))
            : new Finding<Volume>.None(
                NoFigure.WrongDirection,
                "the strength wanted does not lie between what is there and what is added",
                "Add something beyond the strength wanted.");
    }

    /// <summary>Two stocks for one target, strong : weak = (target − weak) : (strong − target), the smaller part
    /// 1.</summary>
    /// <param name="strong">The one strength, in the same unit as the others: percent or fraction.</param>
    /// <param name="weak">The other strength.</param>
    /// <param name="target">The strength wanted, strictly between.</param>
    /// <returns>Wrong direction where the target does not lie between.</returns>
    public static Finding<MixRatio> Stocks(double strong, double weak, double target)
    {
        if (!IsBetween(target, weak, strong))
        {
            return new Finding<MixRatio>.None(
                NoFigure.WrongDirection,
                "the strength wanted does not lie between the two stocks",
                "Take one stock above it and one below.");
        }

        var ofStrong = Math.Abs(target - weak);
        var ofWeak = Math.Abs(strong - target);
        var unit = Math.Min(ofStrong, ofWeak);
        return new Finding<MixRatio>.Found(new MixRatio([ofStrong / unit, ofWeak / unit]));
    }

    private static bool IsBetween(double middle, double one, double other) =>
        (middle - one) * (other - middle) > 0;
}
