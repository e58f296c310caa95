using StudioBot.Craft.Costs;

namespace StudioBot.Records.Ledger;

/// <summary>What one account gains by an act.</summary>
/// <param name="Account">Whose.</param>
/// <param name="Sum">Above zero: the others owe it more; below: it owes them more; never zero.</param>
public sealed record MoneyLine(Account Account, Money Sum);
