namespace StudioBot.Craft.Practice;

/// <summary>Something that goes wrong with a piece, and its likely causes.</summary>
/// <param name="Name">As a reply says it: cracks, sticky resin.</param>
/// <param name="Words">Other words that people use for it.</param>
/// <param name="Causes">The likeliest first; at least one.</param>
public sealed record Fault(string Name, IReadOnlyList<string> Words, IReadOnlyList<Cause> Causes);
