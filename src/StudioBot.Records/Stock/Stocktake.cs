using StudioBot.Records.Materials;

namespace StudioBot.Records.Stock;

/// <summary>A count, and what the book said before it; their difference is booked.</summary>
/// <param name="Before">The level in the book.</param>
/// <param name="Counted">The level that was found, and that the book has now.</param>
public sealed record Stocktake(Amount Before, Amount Counted);
