namespace StudioBot.Records.Pieces;

/// <summary>One line in a piece's book that holds.</summary>
/// <param name="Number">The number of the piece.</param>
/// <param name="ActId">The act it hangs from.</param>
/// <param name="At">The moment it is about, UTC.</param>
/// <param name="MemberId">Whose it is; none: the studio's own.</param>
/// <param name="What">What happened.</param>
public sealed record PieceLine(int Number, long ActId, DateTimeOffset At, long? MemberId, PieceEvent What);
