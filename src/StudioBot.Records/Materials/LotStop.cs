namespace StudioBot.Records.Materials;

/// <summary>A lot is stopped: it is never drawn from unless it is named.</summary>
/// <param name="At">Since when, UTC.</param>
/// <param name="Why">As somebody typed it; none where nobody said.</param>
public sealed record LotStop(DateTimeOffset At, string? Why);
