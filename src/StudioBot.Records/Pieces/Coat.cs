using StudioBot.Craft.Air;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Units;

namespace StudioBot.Records.Pieces;

/// <summary>A layer of resin on a piece, as it was taken.</summary>
/// <param name="A">Of part A; above zero.</param>
/// <param name="B">Of part B; above zero.</param>
public sealed record Coat(Volume A, Volume B)
{
    /// <summary>The ratio of A to B that was asked for; none where nobody said.</summary>
    public MixRatio? Ratio { get; init; }

    /// <summary>How thick it lies; none where nobody worked it out.</summary>
    public Length? Film { get; init; }

    /// <summary>The air it was laid in; none where nobody read it.</summary>
    public RoomAir? Air { get; init; }

    /// <summary>The lots it was taken from, by the studio's own numbers and each once; empty where nobody knows.
    /// </summary>
    public IReadOnlyList<long> LotIds { get; init; } = [];
}
