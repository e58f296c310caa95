using StudioBot.Craft.Coats;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Coats;

/// <summary>What becomes of the last coat of a piece, by the air it has lain in and the air read last.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="ActId">The act that booked the coat.</param>
/// <param name="CoatedAt">When it was laid.</param>
/// <param name="Coat">As it was taken.</param>
/// <param name="Number">Which coat of the piece it is, from 1.</param>
public sealed record CoatOutlook(Piece Piece, long ActId, DateTimeOffset CoatedAt, Coat Coat, int Number)
{
    /// <summary>When the next coat still bonds by itself; none where it is too cold to say.</summary>
    public RecoatWindow? Window { get; init; }

    /// <summary>When the piece may be moved; none where it is too cold to say.</summary>
    public DateTimeOffset? Handling { get; init; }

    /// <summary>When it is done; none where it is too cold to finish.</summary>
    public DateTimeOffset? FullCure { get; init; }

    /// <summary>Why to mind these times, or why there are none; none where nothing speaks against them.</summary>
    public string? Caution { get; init; }
}
