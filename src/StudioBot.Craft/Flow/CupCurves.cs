using System.Globalization;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Flow;

/// <summary>The flow cups and their curves.</summary>
/// <remarks>
/// ISO 2431, ASTM D1200 (Ford), ASTM D4212 (Zahn) and DIN 53211, as a public routine quotes them; ISO 3, 4 and 6
/// match a
/// cup maker's table too, ISO 5 rests on the routine and memory. For Newtonian or nearly Newtonian liquids: a pouring
/// paint's figure is good for "the same as last time", not as material data.
/// </remarks>
public static class CupCurves
{
    private static readonly Temperature At20 = Temperature.FromCelsius(20);
    private static readonly Temperature At23 = Temperature.FromCelsius(23);
    private static readonly Temperature At25 = Temperature.FromCelsius(25);

    /// <summary>Every cup, in each family from the smallest hole to the largest.</summary>
    public static IReadOnlyList<FlowCup> All { get; } =
    [
        Iso(3, 0.443, 200),
        Iso(4, 1.37, 200),
        Iso(5, 3.28, 220),
        Iso(6, 6.90, 570),
        Ford(1, 0.49, 35.0, 55),
        Ford(2, 1.44, 18.0, 40),
        Ford(3, 2.31, 6.58, 20),
        Ford(4, 3.85, 4.49, 20),
        Ford(5, 12.1, 2.0, 20),
        Zahn(1, 1.1, 29, 35),
        Zahn(2, 3.5, 14, 20),
        Zahn(3, 11.7, 7.5, 20),
        Zahn(4, 14.8, 5, 20),
        Zahn(5, 23, 0, 20),
        new("din4", "DIN 4", CupFamily.Din, 4.57, 452, 0, Times(25, 150), At20),
    ];

    /// <summary>The cup of this name, any case, with or without a space; null where there is none.</summary>
    public static FlowCup? Find(string name) => All.FirstOrDefault(cup =>
        string.Equals(cup.Name, name.Replace(" ", "", StringComparison.Ordinal), StringComparison.OrdinalIgnoreCase));

    /// <summary>The kinematic viscosity behind so many seconds, at the liquid's own temperature.</summary>
    /// <returns>
    /// Out of range where the time is too short or too long, with another cup to try; a caution at the edges of ISO
    /// cups, and always for Zahn: one operator repeats within 11 % (ASTM D4212), two workshops may differ by a third.
    /// </returns>
    public static Finding<KinematicViscosity> Viscosity(FlowCup cup, TimeSpan time)
    {
        if (time < cup.Times.AtLeast || time > cup.Times.AtMost)
        {
            return OutOfRange(cup, time);
        }

        var viscosity = KinematicViscosity.FromSquareMillimetresPerSecond(cup.Curve(time));
        return Caution(cup, time) is { } caution
            ? new Finding<KinematicViscosity>.Cautioned(viscosity, caution)
            : new Finding<KinematicViscosity>.Found(viscosity);
    }

    /// <summary>
    /// Another cup for a liquid that this one can't tell: of those that read it within their own range, the own family
    /// first.
    /// </summary>
    /// <returns>Where so short a time says no viscosity, the smallest hole there is, without a time; none where no cup
    /// would do.</returns>
    public static CupChoice? Instead(FlowCup cup, TimeSpan time)
    {
        var tooShort = time < cup.Times.AtLeast;
        if (Better(cup, time, tooShort) is { } better)
        {
            return better;
        }

        var smallest = All.First(other => other.Family == (cup.Family == CupFamily.Din ? CupFamily.Iso : cup.Family));
        return tooShort && smallest != cup ? new CupChoice(smallest, null) : null;
    }

    private static string? Caution(FlowCup cup, TimeSpan time)
    {
        var (from, to) = (cup.Times.From, cup.Times.To);
        return cup.Family switch
        {
            CupFamily.Zahn => "a Zahn cup repeats within 11 %; don't compare with another studio's",
            _ when time < from => Text($"under {from.TotalSeconds:0} s the {cup.Title} cup reads less surely"),
            _ when time > to => Text($"over {to.TotalSeconds:0} s the break of the stream is hard to see"),
            _ => null,
        };
    }

    private static Finding<KinematicViscosity>.None OutOfRange(FlowCup cup, TimeSpan time)
    {
        var tooShort = time < cup.Times.AtLeast;
        var limit = tooShort ? cup.Times.AtLeast : cup.Times.AtMost;
        var (way, size) = tooShort ? ("under", "smaller") : ("over", "larger");
        var why = Text($"{time.TotalSeconds:0.#} s is {way} the {limit.TotalSeconds:0} s of the {cup.Title} cup");
        return new Finding<KinematicViscosity>.None(
            NoFigure.OutOfRange,
            why,
            Instead(cup, time) switch
            {
                { Time: { } drains } other =>
                    Text($"Try a {size} hole: {other.Cup.Title}, about {drains.TotalSeconds:0} s."),
                { } other => $"Try a {size} hole: {other.Cup.Title}.",
                _ => $"Take a cup with a {size} hole.",
            });
    }

    // Of the cups that read this viscosity within their range, the own family first, then the nearest to the middle.
    private static CupChoice? Better(FlowCup cup, TimeSpan time, bool smaller)
    {
        if (time <= TimeSpan.Zero || cup.Curve(time) <= 0)
        {
            return null;
        }

        var viscosity = KinematicViscosity.FromSquareMillimetresPerSecond(cup.Curve(time));
        return All
            .Where(other => other != cup)
            .Select(other => (Cup: other, Time: other.Drains(viscosity)))
            .Where(other => other.Time >= other.Cup.Times.From && other.Time <= other.Cup.Times.To)
            .Where(other => smaller ? other.Time > time : other.Time < time)
            .OrderBy(other => other.Cup.Family != cup.Family)
            .ThenBy(other => Math.Abs(Math.Log(other.Time.TotalSeconds / 50)))
            .Select(other => new CupChoice(other.Cup, other.Time))
            .FirstOrDefault();
    }

    private static FlowCup Iso(int number, double a, double b) => new(
        $"iso{number}", $"ISO {number} mm", CupFamily.Iso, a, b, 0, IsoTimes(number), At23);

    // Beyond the standard's 30 to 100 s with a caution: ASTM D5125 allows 20 s, a cup maker's table goes to 120 s. The
    // curve of the 3 mm cup turns negative at 21.2 s, so that one ends well before.
    private static DrainTimes IsoTimes(int number) =>
        new(Seconds(number == 3 ? 27 : 20), Seconds(30), Seconds(100), Seconds(120));

    private static FlowCup Ford(int number, double a, double offset, double from) => new(
        $"ford{number}", $"Ford {number}", CupFamily.Ford, a, 0, offset, Times(from, 100), At25);

    private static FlowCup Zahn(int number, double a, double offset, double from) => new(
        $"zahn{number}", $"Zahn {number}", CupFamily.Zahn, a, 0, offset, Times(from, 80), At25);

    private static DrainTimes Times(double from, double to) => new(Seconds(from), Seconds(to));

    private static TimeSpan Seconds(double value) => TimeSpan.FromSeconds(value);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
