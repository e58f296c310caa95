using StudioBot.Craft.Costs;

namespace StudioBot.Craft.Stock;

/// <summary>A size that a material is sold in.</summary>
/// <param name="Size">In whole units of the material (mL, g or pieces), above zero.</param>
/// <param name="Price">Of one; zero or more.</param>
public sealed record Pack(int Size, Money Price);
