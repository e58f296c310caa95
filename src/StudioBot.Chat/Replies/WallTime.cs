using System.Globalization;

namespace StudioBot.Chat.Replies;

/// <summary>Moments as the clock on the studio's wall shows them.</summary>
internal static class WallTime
{
    /// <summary>What the clock shows at this moment.</summary>
    public static DateTime Of(DateTimeOffset moment, Studio studio) => studio.Zone.LocalOf(moment);

    /// <summary>today, 9 Nov, 9 Nov 2025.</summary>
    public static string Day(DateTimeOffset moment, Turn turn, Studio studio)
    {
        var (day, today) = (DateOnly.FromDateTime(Of(moment, studio)), DateOnly.FromDateTime(turn.Local));
        return day == today ? "today"
            : day.Year == today.Year ? Show.Day(day)
            : $"{Show.Day(day)} {day.Year.ToString(CultureInfo.InvariantCulture)}";
    }

    /// <summary>9:05.</summary>
    public static string Clock(DateTimeOffset moment, Studio studio) =>
        Of(moment, studio).ToString("H:mm", CultureInfo.InvariantCulture);

    /// <summary>How long ago it was, 80 min; nothing where it is still to come.</summary>
    public static string Age(DateTimeOffset moment, Turn turn, Studio studio)
    {
        var age = turn.Local - Of(moment, studio);
        return Show.Time(age > TimeSpan.Zero ? age : TimeSpan.Zero);
    }
}
