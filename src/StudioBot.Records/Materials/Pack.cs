using StudioBot.Craft.Costs;

namespace StudioBot.Records.Materials;

/// <summary>A size a material is sold in.</summary>
/// <param name="Holds">What is in it; above zero.</param>
/// <param name="Price">What it costs; none while nobody said.</param>
public sealed record Pack(Amount Holds, Money? Price);
