using StudioBot.Craft.Flow;

namespace StudioBot.Records.Recipes;

/// <summary>How a batch flowed when somebody read it.</summary>
/// <param name="Batch">The batch's number.</param>
/// <param name="Recipe">The name of the recipe it follows.</param>
/// <param name="Reading">A cup's seconds or a trace, with how warm the mixture was where that is known.</param>
/// <param name="At">The moment it is about, UTC.</param>
/// <param name="ActId">The act it hangs from: what was put in by later ones was not in it yet.</param>
public sealed record BatchFlow(int Batch, string Recipe, FlowReading Reading, DateTimeOffset At, long ActId);
