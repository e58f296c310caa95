namespace StudioBot.Craft.Tests.Whole.ReadyTruth;

/// <summary>What became of one piece under a policy.</summary>
/// <param name="Ready">The true day.</param>
/// <param name="Coated">The day it was coated.</param>
/// <param name="Looks">How often a hand felt it.</param>
/// <param name="WeighedAgain">How many evenings a weight that rose held it back.</param>
/// <param name="HeldAtPing">Whether the 80 % interval held the truth when the piece was first pinged; null: it never
/// was.</param>
internal sealed record Outcome(double Ready, int Coated, int Looks, int WeighedAgain, bool? HeldAtPing)
{
    /// <summary>Coated more than half a day before the truth.</summary>
    public bool IsTooEarly => Ready - Coated > 0.5;

    /// <summary>Coated more than 15 % before the truth.</summary>
    public bool IsFarTooEarly => Coated < 0.85 * Ready;

    /// <summary>Days it lay ready and uncoated.</summary>
    public double InVain => Math.Max(0, Coated - Ready);
}
