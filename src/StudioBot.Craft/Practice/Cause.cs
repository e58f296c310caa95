namespace StudioBot.Craft.Practice;

/// <summary>One likely cause of a fault.</summary>
/// <param name="Why">The cause, in one short line.</param>
/// <param name="Change">What to change, in one short line.</param>
/// <param name="Rank">1 for the likeliest, where a studio's records say nothing.</param>
/// <param name="Sign">What in a studio's records speaks for it.</param>
/// <param name="Provenance">Where it comes from.</param>
public sealed record Cause(string Why, string Change, int Rank, CauseSign Sign, Provenance Provenance);
