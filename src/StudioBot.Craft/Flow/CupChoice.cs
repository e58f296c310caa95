namespace StudioBot.Craft.Flow;

/// <summary>A cup that would do where another does not.</summary>
/// <param name="Cup">Which one.</param>
/// <param name="Time">How long it would drain; none where the first time says no viscosity.</param>
public sealed record CupChoice(FlowCup Cup, TimeSpan? Time);
