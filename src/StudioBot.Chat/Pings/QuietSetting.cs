using System.Globalization;

namespace StudioBot.Chat.Pings;

/// <summary>The studio's quiet hours, as they are kept among its settings: <c>22:00-08:00</c>.</summary>
internal static class QuietSetting
{
    /// <summary>Under which name.</summary>
    public const string Name = "quiet";

    private const string Clock = "HH:mm";
    private const string Shown = "H:mm";

    /// <summary>When nobody is pinged unless the studio or the person says otherwise (common practice).</summary>
    public static readonly (TimeOnly From, TimeOnly Until) Usual = (new(22, 0), new(8, 0));

    /// <summary>As a reply shows them: <c>22:00 to 8:00</c>; none where they begin and end at once.</summary>
    public static string Said((TimeOnly From, TimeOnly Until) hours) => hours.From == hours.Until
        ? "none"
        : $"{Text(hours.From, Shown)} to {Text(hours.Until, Shown)}";

    /// <summary>As it is kept.</summary>
    public static string Kept(TimeOnly from, TimeOnly until) => $"{Text(from, Clock)}-{Text(until, Clock)}";

    /// <summary>As it was kept; none where nothing was.</summary>
    /// <exception cref="FormatException">It is no pair of times.</exception>
    public static (TimeOnly From, TimeOnly Until)? Read(string? kept) => kept?.Split('-') switch
    {
        null => null,
        [var from, var until] => (
            TimeOnly.ParseExact(from, Clock, CultureInfo.InvariantCulture),
            TimeOnly.ParseExact(until, Clock, CultureInfo.InvariantCulture)),
        _ => throw new FormatException($"“{kept}” are no quiet hours."),
    };

    private static string Text(TimeOnly time, string format) => time.ToString(format, CultureInfo.InvariantCulture);
}
