using StudioBot.Craft.Units;

namespace StudioBot.Chat;

/// <summary>Who wrote a message, as far as reading it needs to know.</summary>
/// <param name="Name">As the studio calls them.</param>
/// <param name="IsSteward">Whether they keep house.</param>
/// <param name="Units">What their bare ounces and degrees mean.</param>
public sealed record Speaker(string Name, bool IsSteward, UnitSystem Units = UnitSystem.Metric);
