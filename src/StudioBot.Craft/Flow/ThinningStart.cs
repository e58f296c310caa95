namespace StudioBot.Craft.Flow;

/// <summary>
/// The first try where only one reading is known: enough to move a reading, too little to pass the target.
/// </summary>
/// <param name="What">Medium to raise a trace, a thinner to lower a reading.</param>
/// <param name="Share">How much of it, as a fraction of what is in the cup.</param>
public sealed record ThinningStart(AddedLiquid What, double Share);
