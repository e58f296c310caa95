namespace StudioBot.Craft.Costs;

/// <summary>Something one member paid for several.</summary>
/// <param name="PaidBy">Who paid.</param>
/// <param name="Amount">How much; below zero for a refund.</param>
/// <param name="Shares">Who bears it, by weight, in the order they joined: a tied cent goes to the earlier.</param>
public sealed record SharedCost(long PaidBy, Money Amount, IReadOnlyList<CostShare> Shares);
