namespace StudioBot.Craft.Stock;

/// <summary>A delivery that may be drawn from.</summary>
/// <param name="Label">What is written on it.</param>
/// <param name="Left">In the book's whole units: microlitres, milligrams or pieces; zero or more.</param>
/// <param name="IsStopped">Never to be proposed again.</param>
public sealed record OpenLot(string Label, long Left, bool IsStopped = false);
