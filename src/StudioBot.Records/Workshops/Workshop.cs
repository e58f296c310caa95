using StudioBot.Records.Materials;

namespace StudioBot.Records.Workshops;

/// <summary>A workshop for which something is set aside on the shelf.</summary>
/// <param name="Id">The studio's own number for it.</param>
/// <param name="ActId">The act that reserved it, whose undo cancels it.</param>
/// <param name="StartsAt">When it starts, UTC: from then on it reserves nothing.</param>
/// <param name="People">How many come.</param>
/// <param name="Words">As it was typed.</param>
/// <param name="Takes">What it will take, by the number of the material.</param>
public sealed record Workshop(
    long Id,
    long ActId,
    DateTimeOffset StartsAt,
    int People,
    string Words,
    IReadOnlyDictionary<long, Amount> Takes);
