namespace StudioBot.Craft.Tests.Whole.ReadyTruth;

/// <summary>How a studio decides that a piece may be coated.</summary>
/// <param name="Name">As printed.</param>
/// <param name="FromDay">The first day it may be looked at or coated.</param>
/// <param name="Odds">How likely ready it must be said to be; null: nobody asks the estimate.</param>
/// <param name="Looks">A hand has the last word.</param>
/// <param name="Weighs">It is weighed on the usual days.</param>
internal sealed record Policy(string Name, int FromDay, double? Odds, bool Looks, bool Weighs)
{
    /// <summary>The policies compared.</summary>
    public static IReadOnlyList<Policy> All { get; } =
    [
        new("always 14", 14, null, false, false),
        new("always 21", 21, null, false, false),
        new("hand check from day 14", 14, null, true, false),
        new("ping at 0.70 + hand check", 1, 0.70, true, false),
        new("weighings alone, 0.80", 1, 0.80, false, true),
        new("weighings alone, 0.90", 1, 0.90, false, true),
        new("weighings + check, 0.70", 1, 0.70, true, true),
        new("weighings + check, 0.80", 1, 0.80, true, true),
    ];

    /// <summary>The one of this name.</summary>
    public static Policy Called(string name) => All.Single(policy => policy.Name == name);
}
