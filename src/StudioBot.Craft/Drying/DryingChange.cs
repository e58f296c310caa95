namespace StudioBot.Craft.Drying;

/// <summary>From some piece on, pieces dry otherwise than those before them.</summary>
/// <param name="First">What the first of them taught.</param>
/// <param name="Pieces">How many of the last finished pieces.</param>
/// <param name="Factor">Their time over that of those before: 1.5 is half as long again.</param>
public sealed record DryingChange(Lesson First, int Pieces, double Factor);
