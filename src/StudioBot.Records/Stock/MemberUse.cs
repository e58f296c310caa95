namespace StudioBot.Records.Stock;

/// <summary>What a member used of a material.</summary>
/// <param name="Units">How much, in the book's whole units; what was mixed too.</param>
/// <param name="Cents">What that was charged with: what was mixed is charged when the mixture is used.</param>
public readonly record struct MemberUse(long Units, long Cents);
