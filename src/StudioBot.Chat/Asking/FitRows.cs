using StudioBot.Chat.Replies;

namespace StudioBot.Chat.Asking;

/// <summary>Rows whose names come from the studio, cut so that figures stay on the phone.</summary>
internal static class FitRows
{
    /// <summary>The same rows, long names shortened.</summary>
    public static Block.Figures Of(IReadOnlyList<Figure> rows)
    {
        var room = FigureTable.Width - 2 - rows.Max(row => row.Value.Length);
        return new Block.Figures(
            [.. rows.Select(row => row with { Name = Labels.Cut(row.Name, room) })]);
    }
}
