namespace StudioBot.Craft.Stock;

/// <summary>What is left of a delivery, and what its unit cost.</summary>
/// <param name="Left">In the material's unit, zero or more.</param>
/// <param name="UnitPrice">In units of the currency, unrounded.</param>
public sealed record PricedLot(decimal Left, decimal UnitPrice);
