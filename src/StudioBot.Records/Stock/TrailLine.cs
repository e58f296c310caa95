using StudioBot.Records.Materials;

namespace StudioBot.Records.Stock;

/// <summary>One line of a lot that holds.</summary>
/// <param name="ActId">The act it hangs from.</param>
/// <param name="Amount">How much; above zero.</param>
/// <param name="Fills">It came in; else it went out.</param>
/// <param name="Reason">Why.</param>
public sealed record TrailLine(long ActId, Amount Amount, bool Fills, StockReason Reason);
