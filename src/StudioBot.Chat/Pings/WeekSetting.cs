using System.Globalization;
using StudioBot.Craft.Reminders;

namespace StudioBot.Chat.Pings;

/// <summary>When the studio hears of its week, as it is kept among its settings: <c>sunday 18:00</c>.</summary>
internal static class WeekSetting
{
    /// <summary>Under which name.</summary>
    public const string Name = "week";

    private const string Clock = "HH:mm";

    /// <summary>When it comes unless the studio says otherwise (common practice).</summary>
    public static readonly CivilRule Usual = new(new TimeOnly(18, 0), DayOfWeek.Sunday);

    /// <summary>As it is kept.</summary>
    public static string Kept(CivilRule rule) =>
        $"{rule.On.ToString()!.ToLowerInvariant()} {rule.At.ToString(Clock, CultureInfo.InvariantCulture)}";

    /// <summary>As a reply shows it: Sundays at 18:00.</summary>
    public static string Said(CivilRule rule) =>
        $"{rule.On}s at {rule.At.ToString("H:mm", CultureInfo.InvariantCulture)}";

    /// <summary>As it was kept; the usual where nothing was.</summary>
    /// <exception cref="FormatException">It is no day with a time.</exception>
    public static CivilRule Read(string? kept) => kept?.Split(' ') switch
    {
        null => Usual,
        [var day, var time] when Enum.TryParse<DayOfWeek>(day, ignoreCase: true, out var on) =>
            new CivilRule(TimeOnly.ParseExact(time, Clock, CultureInfo.InvariantCulture), on),
        _ => throw new FormatException($"“{kept}” is no day with a time."),
    };
}
