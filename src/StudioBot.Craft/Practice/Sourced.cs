namespace StudioBot.Craft.Practice;

/// <summary>A value of the trade with its provenance.</summary>
/// <typeparam name="T">What the value is.</typeparam>
public sealed record Sourced<T>(T Value, Provenance Provenance);
