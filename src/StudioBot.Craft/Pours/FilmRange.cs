using StudioBot.Craft.Units;

namespace StudioBot.Craft.Pours;

/// <summary>A wet film as practice knows it: the usual one and how far it scatters.</summary>
/// <param name="Low">The thin end.</param>
/// <param name="Usual">What is reckoned with.</param>
/// <param name="High">The thick end.</param>
public sealed record FilmRange(Length Low, Length Usual, Length High);
