using StudioBot.Craft.Units;

namespace StudioBot.Craft.Coats;

/// <summary>Resin in cups small enough not to heat up, all alike.</summary>
/// <param name="Cups">How many.</param>
/// <param name="EachCup">What each one takes.</param>
public sealed record CupPlan(int Cups, ResinAmounts EachCup)
{
    // A total that fills the last cup exactly does not need one more; floating point must not add it.
    private const double Rounding = 1e-9;

    private static readonly TimeSpan MixingOneCup = TimeSpan.FromMinutes(3);

    /// <summary>What the scale shows after part A, poured into an empty, tared cup.</summary>
    public Mass ScaleAfterA => EachCup.PartA.Mass;

    /// <summary>What it shows after part B on top.</summary>
    public Mass ScaleAfterB => EachCup.Mass;

    /// <summary>So many equal cups that none holds more than is safe.</summary>
    /// <param name="resin">The resin.</param>
    /// <param name="total">What is needed, above zero.</param>
    /// <param name="safe">What one cup may hold, above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">Nothing is needed, or the safe cup holds nothing.</exception>
    public static CupPlan Of(Resin resin, Volume total, Volume safe)
    {
        if (total.Millilitres <= 0 || safe.Millilitres <= 0)
        {
            throw new ArgumentOutOfRangeException(nameof(total), total, "A need and a cup are above zero.");
        }

        var cups = (int)Math.Max(1, Math.Ceiling(total / safe * (1 - Rounding)));
        return new CupPlan(cups, resin.Split(total).Share(cups));
    }

    /// <summary>
    /// Whether to mix the next cup only after the last is poured: mixing all (3 min each) and pouring would take more
    /// than
    /// half the working time (common practice).
    /// </summary>
    public bool MixOneByOne(TimeSpan pouring, TimeSpan workingTime) =>
        Cups > 1 && MixingOneCup * Cups + pouring > workingTime / 2;
}
