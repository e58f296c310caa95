namespace StudioBot.Chat.Reading.Values;

/// <summary>The names of days and months, whole or short: tue, tuesday, nov, november.</summary>
internal static class CalendarWords
{
    private const int ShortestName = 3;

    // Sunday first, as in DayOfWeek.
    private static readonly string[] Days =
        [.. "sunday monday tuesday wednesday thursday friday saturday".Split(' ')];

    private static readonly string[] Months =
    [
        .. "january february march april may june july august september october november december".Split(' '),
    ];

    /// <summary>All of them, written out.</summary>
    public static IEnumerable<string> All => Days.Concat(Months);

    /// <summary>The number of the month of this name, 1 to 12; none where it is none.</summary>
    public static int? Month(string word) => Find(Months, word, longestShort: 4) + 1;

    /// <summary>The day of the week of this name; none where it is none.</summary>
    public static DayOfWeek? Day(string word) => (DayOfWeek?)Find(Days, word, longestShort: 5);

    // Short names are the first letters: sept, thurs.
    private static int? Find(string[] names, string word, int longestShort)
    {
        var mayBeShort = word.Length >= ShortestName && word.Length <= longestShort;
        var found = Array.FindIndex(
            names,
            name => name == word || (mayBeShort && name.StartsWith(word, StringComparison.Ordinal)));
        return found < 0 ? null : found;
    }
}
