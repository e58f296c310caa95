using StudioBot.Craft.Costs;

namespace StudioBot.Records.Ledger;

/// <summary>Money that one says they gave to a member, who has not said yet that it came.</summary>
/// <param name="ActId">The act by which it was paid.</param>
/// <param name="From">A member's account, or the kitty.</param>
/// <param name="To">Who is to have got it.</param>
/// <param name="Sum">How much; above zero.</param>
/// <param name="HappenedAt">The moment it is about, UTC.</param>
public sealed record Payment(long ActId, Account From, long To, Money Sum, DateTimeOffset HappenedAt);
