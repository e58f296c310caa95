using StudioBot.Records.Materials;

namespace StudioBot.Records.Stock;

/// <summary>So much from one lot.</summary>
/// <param name="LotId">Which lot.</param>
/// <param name="Label">As written on it; none where nobody wrote one.</param>
/// <param name="Amount">How much; above zero.</param>
public sealed record LotShare(long LotId, string? Label, Amount Amount);
