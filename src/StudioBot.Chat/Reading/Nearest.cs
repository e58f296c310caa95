namespace StudioBot.Chat.Reading;

/// <summary>Which known word a misspelt one is nearest to.</summary>
internal static class Nearest
{
    /// <summary>All words that are as near as the nearest within reach.</summary>
    /// <param name="word">As typed, in lower case.</param>
    /// <param name="known">Words to compare with.</param>
    /// <param name="reach">The largest distance allowed.</param>
    public static IReadOnlyList<string> All(string word, IEnumerable<string> known, int reach)
    {
        List<string> nearest = [];
        var least = reach;
        foreach (var candidate in known)
        {
            var distance = Distance(word, candidate, least);
            if (distance < least)
            {
                nearest.Clear();
                least = distance;
            }

            if (distance <= least && !nearest.Contains(candidate))
            {
                nearest.Add(candidate);
            }
        }

        return nearest;
    }

    /// <summary>How many slips a word of this length may hold.</summary>
    public static int Reach(string word) => word.Length switch
    {
        < 3 => 0,
        <= 5 => 1,
        _ => 2,
    };

    /// <summary>
    /// Slips between two words: a letter too many, too few, another one, or two swapped (Damerau's distance with
    /// adjacent swaps). Gives up at <paramref name="limit"/>.
    /// </summary>
    public static int Distance(string left, string right, int limit)
    {
        if (Math.Abs(left.Length - right.Length) > limit || left.Length > 30 || right.Length > 30)
        {
            return limit + 1;
        }

        // Most words differ too much in their letters alone.
        if (int.PopCount(Letters(left) ^ Letters(right)) > 2 * limit)
        {
            return limit + 1;
        }

        Span<int> before = stackalloc int[right.Length + 1];
        Span<int> last = stackalloc int[right.Length + 1];
        Span<int> row = stackalloc int[right.Length + 1];
        for (var j = 0; j <= right.Length; j++)
        {
            last[j] = j;
        }

        for (var i = 1; i <= left.Length; i++)
        {
            row[0] = i;
            for (var j = 1; j <= right.Length; j++)
            {
                var change = left[i - 1] == right[j - 1] ? 0 : 1;
                row[j] = Math.Min(Math.Min(row[j - 1], last[j]) + 1, last[j - 1] + change);
                if (i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1])
                {
                    row[j] = Math.Min(row[j], before[j - 2] + 1);
                }
            }

            last.CopyTo(before);
            row.CopyTo(last);
        }

        return last[right.Length];
    }

    // A bit for each letter that occurs: each slip changes two of them at most.
    private static int Letters(string word)
    {
        var letters = 0;
        foreach (var letter in word)
        {
            letters |= 1 << (letter & 31);
        }

        return letters;
    }
}
