using System.Globalization;

namespace StudioBot.Chat.Sharing;

/// <summary>A month of the studio's wall: 2026-11.</summary>
internal static class AccountMonth
{
    /// <summary>The one in which a message was typed.</summary>
    public static string Now(Turn turn) => turn.Local.ToString("yyyy-MM", CultureInfo.InvariantCulture);

    /// <summary>Its first moment, and the first after it.</summary>
    public static (DateTimeOffset From, DateTimeOffset Until) Of(string month, Studio studio)
    {
        var first = FirstDay(month);
        return (
            studio.Zone.InstantOf(first, TimeOnly.MinValue),
            studio.Zone.InstantOf(first.AddMonths(1), TimeOnly.MinValue));
    }

    /// <summary>November 2026.</summary>
    public static string Words(string month) =>
        FirstDay(month).ToString("MMMM yyyy", CultureInfo.InvariantCulture);

    private static DateOnly FirstDay(string month) =>
        DateOnly.ParseExact(month + "-01", "yyyy-MM-dd", CultureInfo.InvariantCulture);
}
