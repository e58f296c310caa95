namespace StudioBot.Craft.Costs;

/// <summary>A member's weight in a shared cost: what they used of it, in any one unit.</summary>
public readonly record struct CostShare(long Member, decimal Weight);
