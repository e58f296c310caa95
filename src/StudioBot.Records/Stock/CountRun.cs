using StudioBot.Craft.Costs;

namespace StudioBot.Records.Stock;

/// <summary>Counts of a material between which nothing else moved it: each puts right the one before.</summary>
/// <param name="Id">The act of the first of them.</param>
/// <param name="At">The moment the last of them is about, UTC.</param>
/// <param name="Shares">What each member got by it, below zero: bore; the studio is 0.</param>
public sealed record CountRun(long Id, DateTimeOffset At, IReadOnlyDictionary<long, Money> Shares)
{
    /// <summary>What they found over the book, below zero: missing.</summary>
    public Money Worth => new(Shares.Values.Sum(share => share.Cents));
}
