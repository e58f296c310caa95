using StudioBot.Craft.Units;

namespace StudioBot.Craft.Drying;

/// <summary>
/// The late course of a drying piece: m(x) = m_∞ + Δ·exp(−x/τ), x since the pour by the room's clock.
/// </summary>
/// <param name="DryMass">m_∞: what it will weigh.</param>
/// <param name="Loss">Δ: what the curve, carried back to the pour, would have lost; only its course after the skin
/// closed is real.</param>
/// <param name="Tau">τ: the time in which the rest falls to 37 %, in equivalent time.</param>
/// <param name="TauFrom">The low end of τ's interval.</param>
/// <param name="TauTo">The high end.</param>
/// <param name="IsOneCurve">False: the readings stray from one exponential, and the interval was widened for
/// it.</param>
public sealed record DryingCurve(
    Mass DryMass, Mass Loss, TimeSpan Tau, TimeSpan TauFrom, TimeSpan TauTo, bool IsOneCurve = true)
{
    /// <summary>What is still to go after this time.</summary>
    public Mass Left(TimeSpan elapsed) => Loss * Math.Exp(-(elapsed / Tau));

    /// <summary>When, since the pour, only 1 % of the water is left.</summary>
    public TimeSpan Ready(Mass water) => ReadyLine.TimeTo(ReadyLine.Of(water), Loss, Tau);
}
