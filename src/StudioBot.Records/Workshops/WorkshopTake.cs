using StudioBot.Records.Materials;

namespace StudioBot.Records.Workshops;

/// <summary>What a workshop was to take of one material.</summary>
/// <param name="MaterialId">The number of the material.</param>
/// <param name="StartsAt">When the workshop started, UTC.</param>
/// <param name="Amount">How much; above zero.</param>
public sealed record WorkshopTake(long MaterialId, DateTimeOffset StartsAt, Amount Amount);
