namespace StudioBot.Craft.Tests.Whole.ReadyTruth;

/// <summary>One studio's pieces: what is told of each, untaught, and what becomes of it under each policy.</summary>
internal sealed record StudioRun(
    IReadOnlyList<FreshLook> AtPour,
    IReadOnlyList<FreshLook> AfterThree,
    IReadOnlyList<FreshLook> AfterSix,
    IReadOnlyDictionary<Policy, IReadOnlyList<Outcome>> Outcomes)
{
    /// <summary>Of this studio.</summary>
    public static StudioRun Of(TrueStudio studio) => new(
        [.. studio.Poured.Select(piece => FreshLook.Of(piece, 0))],
        [.. studio.Poured.Select(piece => FreshLook.Of(piece, 8, 3, 5, 8))],
        [.. studio.Poured.Select(piece => FreshLook.Of(piece, 21, 3, 5, 8, 12, 16, 21))],
        Policy.All.ToDictionary(policy => policy, policy => new PolicyWalk(policy).Through(studio)));
}
