namespace StudioBot.Chat.Replies;

/// <summary>Figures under each other: names to the left, values to the right.</summary>
public static class FigureTable
{
    /// <summary>The widest row that a phone shows in fixed width without wrapping.</summary>
    public const int Width = 34;

    /// <summary>The rows as text of equal width.</summary>
    public static IEnumerable<string> Lines(IReadOnlyList<Figure> rows)
    {
        var names = rows.Max(row => row.Name.Length);
        var values = rows.Max(row => row.Value.Length);
        return rows.Select(row => row.Name.PadRight(names) + "  " + row.Value.PadLeft(values));
    }
}
