using StudioBot.Craft.Units;

namespace StudioBot.Craft.Flow;

/// <summary>A standard cup with a hole, and its curve from seconds to viscosity: ν = A·(t − C) − B/t in
/// mm²/s.</summary>
/// <param name="Name">As people type it: ford4.</param>
/// <param name="Title">As replies write it: Ford 4.</param>
/// <param name="Family">Whose cup it is.</param>
/// <param name="A">Slope, mm²/s².</param>
/// <param name="B">Of the term that falls with time, mm².</param>
/// <param name="C">Offset, s.</param>
/// <param name="Times">Which times count.</param>
/// <param name="RunAt">Where the standard runs it; a reading is the viscosity at the liquid's own temperature.</param>
public sealed record FlowCup(
    string Name,
    string Title,
    CupFamily Family,
    double A,
    double B,
    double C,
    DrainTimes Times,
    Temperature RunAt)
{
    /// <summary>The curve itself, without any verdict on its range; may be negative there.</summary>
    internal double Curve(TimeSpan time) => A * (time.TotalSeconds - C) - B / time.TotalSeconds;

    /// <summary>How long this viscosity drains: t = (ν + A·C + √((ν + A·C)² + 4AB))/(2A).</summary>
    public TimeSpan Drains(KinematicViscosity viscosity)
    {
        var reach = viscosity.SquareMillimetresPerSecond + A * C;
        return TimeSpan.FromSeconds((reach + Math.Sqrt(reach * reach + 4 * A * B)) / (2 * A));
    }
}
