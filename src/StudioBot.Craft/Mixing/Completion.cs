namespace StudioBot.Craft.Mixing;

/// <summary>How a cup that already holds something comes to its ratio.</summary>
/// <typeparam name="T">A volume or a mass.</typeparam>
/// <param name="TakeOut">Of the stirred mixture, before anything is added; nothing where all of it may stay.</param>
/// <param name="Add">Of each part, in the order of the ratio.</param>
/// <param name="Total">What the cup holds afterwards.</param>
public sealed record Completion<T>(T TakeOut, IReadOnlyList<T> Add, T Total);
