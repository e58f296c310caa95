namespace StudioBot.Craft.Stock;

/// <summary>What something taken from stock cost.</summary>
/// <param name="Cost">In units of the currency, unrounded; it is rounded where it enters a book.</param>
/// <param name="IsBeyondLots">More was taken than the lots hold: the rest was valued at the last known price.</param>
public sealed record IssueValue(decimal Cost, bool IsBeyondLots);
