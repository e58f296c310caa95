namespace StudioBot.Craft.Stock;

/// <summary>So much from one lot, in the book's whole units.</summary>
public sealed record LotPortion(OpenLot Lot, long Amount);
