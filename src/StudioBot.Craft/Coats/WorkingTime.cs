namespace StudioBot.Craft.Coats;

/// <summary>A pot life carried to another temperature.</summary>
/// <param name="Likely">By Arrhenius with 55 kJ/mol.</param>
/// <param name="Shortest">The short end of the band for 50 to 60 kJ/mol.</param>
/// <param name="Longest">The long end.</param>
public sealed record WorkingTime(TimeSpan Likely, TimeSpan Shortest, TimeSpan Longest);
