using StudioBot.Craft.Drying;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Drying;

/// <summary>A piece that has dried.</summary>
/// <param name="Piece">Which.</param>
/// <param name="Known">What is known of it now.</param>
/// <param name="EndedAt">When somebody called it dry or coated it.</param>
/// <param name="Took">How long it had dried by then, in equivalent time.</param>
/// <param name="Lesson">What it taught.</param>
internal sealed record PastDrying(
    Piece Piece, DryingPiece Known, DateTimeOffset EndedAt, TimeSpan Took, Lesson Lesson);
