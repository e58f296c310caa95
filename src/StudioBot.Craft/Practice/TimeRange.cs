namespace StudioBot.Craft.Practice;

/// <summary>A time after mixing that differs from product to product.</summary>
/// <param name="Early">The early end; what must not be missed is announced with it.</param>
/// <param name="Late">The late end; what must not come too soon waits for it.</param>
public sealed record TimeRange(TimeSpan Early, TimeSpan Late);
