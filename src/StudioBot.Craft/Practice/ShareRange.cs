namespace StudioBot.Craft.Practice;

/// <summary>A share of something, 0 to 1: the usual one and how far practice scatters.</summary>
/// <param name="Low">The low end.</param>
/// <param name="Usual">What is reckoned with.</param>
/// <param name="High">The high end.</param>
public sealed record ShareRange(double Low, double Usual, double High);
