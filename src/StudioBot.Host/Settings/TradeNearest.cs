namespace StudioBot.Host.Settings;

/// <summary>The known name that a mistyped one most likely meant.</summary>
internal static class TradeNearest
{
    /// <summary>The fewest letters away; where several are, the first.</summary>
    /// <param name="typed">What stands in the file.</param>
    /// <param name="known">What could stand there; at least one.</param>
    public static string To(string typed, IEnumerable<string> known) => known.MinBy(name => Distance(typed, name))!;

    /// <summary>How many letters lie between the two: put in, left out or changed; case counts for nothing, as it is
    /// the likeliest slip.</summary>
    /// <remarks>Levenshtein's distance, one row at a time.</remarks>
    public static int Distance(string from, string to)
    {
        var row = Enumerable.Range(0, to.Length + 1).ToArray();
        for (var i = 1; i <= from.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= to.Length; j++)
            {
                var same = char.ToUpperInvariant(from[i - 1]) == char.ToUpperInvariant(to[j - 1]);
                var change = diagonal + (same ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(change, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[^1];
    }
}
