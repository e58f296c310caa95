namespace StudioBot.Chat.Pictures;

/// <summary>What the picture of several pieces shows; moments are those of the studio's wall clock.</summary>
/// <param name="Title">Which they are: 5 drying, page 1 of 2.</param>
/// <param name="Line">In which order they stand; empty where that needs no word.</param>
/// <param name="Now">The moment of asking.</param>
/// <param name="Rows">The pieces from top to bottom, 1 to <see cref="PiecesPicture.MostRows"/>.</param>
/// <param name="More">How many more there are that are not shown.</param>
internal sealed record PiecesFigures(string Title, string Line, DateTime Now, IReadOnlyList<PieceRow> Rows, int More);
