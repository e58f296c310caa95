using StudioBot.Craft.Pours;

namespace StudioBot.Craft.Practice;

/// <summary>What the trade assumes before a studio's own records speak.</summary>
/// <param name="Pours">Techniques and the defaults of a pour.</param>
/// <param name="Materials">What a new studio starts with; at least one.</param>
/// <param name="Resins">The two-part systems; at least one.</param>
/// <param name="UsualResin">Taken where a message names none; one of <paramref name="Resins"/>.</param>
/// <param name="Safety">The cautions.</param>
/// <param name="Faults">What goes wrong, with its causes.</param>
public sealed record TradePractice(
    PourPractice Pours,
    IReadOnlyList<StarterMaterial> Materials,
    IReadOnlyList<ResinSystem> Resins,
    ResinSystem UsualResin,
    SafetyLines Safety,
    IReadOnlyList<Fault> Faults)
{
    /// <summary>The named ways to pour, without their provenance.</summary>
    public IReadOnlyList<Technique> Techniques => [.. Pours.Techniques.Select(technique => technique.Value)];
}
