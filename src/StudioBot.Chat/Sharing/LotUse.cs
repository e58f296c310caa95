using StudioBot.Records.Materials;
using StudioBot.Records.Stock;
using Booked = StudioBot.Records.Acts.Act;

namespace StudioBot.Chat.Sharing;

/// <summary>One step on the way of a lot: what one act took from it, or from what was mixed with it.</summary>
/// <param name="From">What it was taken from.</param>
/// <param name="Act">The act.</param>
/// <param name="Reason">Why.</param>
internal sealed record LotUse(TrailVessel From, Booked Act, StockReason Reason)
{
    /// <summary>It was named at every step up to here; else somewhere the oldest that was open was assumed.</summary>
    public bool IsSure { get; init; }

    /// <summary>It was taken from the lot itself, not from a mixture.</summary>
    public bool IsDirect { get; init; }

    /// <summary>It came back.</summary>
    public bool Fills { get; init; }

    /// <summary>How much; empty where nobody measured it.</summary>
    public IReadOnlyList<Amount> Amounts { get; init; } = [];

    /// <summary>The pieces it went into.</summary>
    public IReadOnlyList<int> Pieces { get; init; } = [];

    /// <summary>What it was mixed into; empty where it was not.</summary>
    public IReadOnlyList<TrailVessel> Into { get; init; } = [];
}
