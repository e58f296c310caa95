namespace StudioBot.Records.Recipes;

/// <summary>A saved mixture in parts.</summary>
/// <param name="Id">The studio's own number for it.</param>
/// <param name="Name">As people type it; unique, upper and lower case alike.</param>
/// <param name="Makes">The name of the material it makes; none for colours that go straight into a pour.</param>
/// <param name="Parts">In the order they were saved; at least one.</param>
public sealed record Recipe(long Id, string Name, string? Makes, IReadOnlyList<Part> Parts);
