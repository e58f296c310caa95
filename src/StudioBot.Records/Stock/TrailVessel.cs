namespace StudioBot.Records.Stock;

/// <summary>What something may be in on its way: a lot, a batch, or a batch that is a lot of the stock.</summary>
/// <param name="LotId">Its lot; none: a batch whose recipe makes no material.</param>
/// <param name="Label">As written on the lot; none where nobody wrote one.</param>
/// <param name="Batch">Its batch; none: no mixture of this studio.</param>
public sealed record TrailVessel(long? LotId, string? Label, int? Batch);
