using StudioBot.Craft.Costs;

namespace StudioBot.Records.Ledger;

/// <summary>One line of one account, with what it comes from.</summary>
/// <param name="ActId">The act it hangs from.</param>
/// <param name="Kind">The word of the command; of an undo, that of what it takes back.</param>
/// <param name="Words">As typed; of an undo, the words of what it takes back.</param>
/// <param name="WhoseId">For whom it was written, else who wrote it; none: the studio itself.</param>
/// <param name="IsUndo">Whether it takes another back.</param>
/// <param name="Sum">Above zero: the others owe it more.</param>
/// <param name="HappenedAt">The moment it is about, UTC.</param>
public sealed record AccountEntry(
    long ActId, string Kind, string Words, long? WhoseId, bool IsUndo, Money Sum, DateTimeOffset HappenedAt)
{
    /// <summary>Who wrote it; of an undo, who took it back; none: the studio itself.</summary>
    public long? AuthorId { get; init; }
}
