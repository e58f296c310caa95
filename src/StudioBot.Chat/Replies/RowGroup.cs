namespace StudioBot.Chat.Replies;

/// <summary>Rows of figures under a heading of their own.</summary>
/// <param name="Heading">What they have in common, in a few words without a stop; empty: nothing stands above.</param>
/// <param name="Rows">The rows, in their order.</param>
internal sealed record RowGroup(string Heading, IReadOnlyList<Figure> Rows);
