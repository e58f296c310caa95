using StudioBot.Craft.Units;

namespace StudioBot.Craft.Drying;

/// <summary>The hand check by two weighings a day apart: nothing to speak of is being lost any more.</summary>
/// <remarks>
/// A change below 0.1 % of the paint's mass in 24 h (from memory; standards dry to a small change likewise).
/// </remarks>
public static class ConstantMass
{
    private const double ShareADay = 0.001;

    /// <summary>
    /// How far apart the two must be for a scale to see it: a day, or three where a division is more than it.
    /// </summary>
    /// <param name="paint">The paint's mass, not the panel's.</param>
    /// <param name="division">One division of the scale.</param>
    public static TimeSpan Apart(Mass paint, Mass division) =>
        division <= paint * ShareADay ? TimeSpan.FromDays(1) : TimeSpan.FromDays(3);

    /// <summary>Whether the mass stands still: a change either way below 0.1 % of the paint's mass a day.</summary>
    /// <param name="first">The earlier mass.</param>
    /// <param name="second">The later one.</param>
    /// <param name="apart">The time between them on the wall.</param>
    /// <param name="paint">The paint's mass, not the panel's.</param>
    /// <param name="division">One division of the scale.</param>
    /// <returns>No answer where they are too close together for this scale.</returns>
    public static Finding<bool> Of(Mass first, Mass second, TimeSpan apart, Mass paint, Mass division)
    {
        var needed = Apart(paint, division);
        return apart < needed
            ? new Finding<bool>.None(
                NoFigure.Undetermined,
                "too soon for this scale to see a change",
                needed.Days == 1 ? "weigh it a day apart" : "weigh it three days apart, or several pieces at once")
            : new Finding<bool>.Found(
                Math.Abs(first.Grams - second.Grams) < ShareADay * paint.Grams * apart.TotalDays);
    }
}
