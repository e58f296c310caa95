using StudioBot.Craft.Units;

namespace StudioBot.Craft.Practice;

/// <summary>How much mixed resin may stand in one cup before it heats itself up.</summary>
/// <param name="Usual">In an ordinary room.</param>
/// <param name="Warm">In a warm room.</param>
/// <param name="WarmAbove">The room's temperature above which it counts as warm.</param>
public sealed record SafeCups(Volume Usual, Volume Warm, Temperature WarmAbove)
{
    /// <summary>The limit in a room this warm.</summary>
    public Volume In(Temperature room) => room > WarmAbove ? Warm : Usual;
}
