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
/// <param name="From">The shortest time that counts.</param>
/// <param name="To">The longest time that counts.</param>
/// <param name="RunAt">Where the standard runs it; a reading is the viscosity at the liquid's own temperature.</param>
public sealed record FlowCup(
    string Name,
    string Title,
    CupFamily Family,
    double A,
    double B,
    double C,
    TimeSpan From,
    TimeSpan To,
    Temperature RunAt)
{
    // Beyond the standard's own range, with a caution: ASTM D5125 allows 20 s, a cup maker's table goes to 120 s.
    private static readonly TimeSpan IsoFrom = TimeSpan.FromSeconds(20);
    private static readonly TimeSpan IsoTo = TimeSpan.FromSeconds(120);

    // The curve of the 3 mm cup turns negative at 21.2 s, so it ends well before that.
    private static readonly TimeSpan SmallestIsoFrom = TimeSpan.FromSeconds(27);

    /// <summary>The shortest time that still gives a figure, with a caution below <see cref="From"/>.</summary>
    public TimeSpan AtLeast => Family switch
    {
        CupFamily.Iso when A < 1 => SmallestIsoFrom,
        CupFamily.Iso => IsoFrom,
        _ => From,
    };

    /// <summary>The longest time that still gives a figure, with a caution above <see cref="To"/>.</summary>
    public TimeSpan AtMost => Family == CupFamily.Iso ? IsoTo : To;

    /// <summary>The curve itself, without any verdict on its range; may be negative there.</summary>
    internal double Curve(TimeSpan time) => A * (time.TotalSeconds - C) - B / time.TotalSeconds;

    /// <summary>How long this viscosity drains: t = (ν + A·C + √((ν + A·C)² + 4AB))/(2A).</summary>
    public TimeSpan Drains(KinematicViscosity viscosity)
    {
        var reach = viscosity.SquareMillimetresPerSecond + A * C;
        return TimeSpan.FromSeconds((reach + Math.Sqrt(reach * reach + 4 * A * B)) / (2 * A));
    }
}
