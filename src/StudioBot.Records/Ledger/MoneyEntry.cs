using StudioBot.Craft.Costs;

namespace StudioBot.Records.Ledger;

/// <summary>One line in the money book.</summary>
/// <param name="ActId">The act it hangs from.</param>
/// <param name="Account">Whose.</param>
/// <param name="Sum">Above zero: the others owe it more; below: it owes them more.</param>
/// <param name="HappenedAt">The moment it is about, UTC.</param>
public sealed record MoneyEntry(long ActId, Account Account, Money Sum, DateTimeOffset HappenedAt);
