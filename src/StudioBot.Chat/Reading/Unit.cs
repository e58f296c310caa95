namespace StudioBot.Chat.Reading;

/// <summary>A unit as people type it.</summary>
/// <param name="Measure">What it measures.</param>
/// <param name="Factor">How many of the measure's own unit one of it is.</param>
/// <param name="Name">Its short name.</param>
internal sealed record Unit(Measure Measure, double Factor, string Name)
{
    /// <summary>
    /// Spoons, scoops and drops: fine for paint, not for resin, and no mass of a powder by themselves.
    /// </summary>
    public bool IsSpoon => Name is "tsp" or "tbsp" or "scoop" or "drop" or "spoon";
}
