using StudioBot.Craft.Units;

namespace StudioBot.Records.Recipes;

/// <summary>That a batch had gelled.</summary>
/// <param name="Batch">The batch's number.</param>
/// <param name="ActId">The act it hangs from.</param>
/// <param name="At">When it was seen, UTC.</param>
/// <param name="After">How long after it was mixed; above zero.</param>
/// <param name="Warmth">How warm it was; none where nobody read that.</param>
public sealed record BatchGel(int Batch, long ActId, DateTimeOffset At, TimeSpan After, Temperature? Warmth);
