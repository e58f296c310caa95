namespace StudioBot.Craft.Costs;

/// <summary>One payment that settles something.</summary>
public sealed record Transfer(long From, long To, Money Amount);
