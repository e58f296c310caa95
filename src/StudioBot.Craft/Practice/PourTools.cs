using StudioBot.Craft.Units;

namespace StudioBot.Craft.Practice;

/// <summary>What a studio measures with, and so the steps that amounts come in.</summary>
/// <param name="Scoop">One scoop of medium.</param>
/// <param name="Spoon">One level spoon.</param>
/// <param name="HalfSpoon">Half of it.</param>
/// <param name="SyringeStep">The finest step by volume.</param>
/// <param name="ScaleDivision">The finest step by mass.</param>
public sealed record PourTools(
    Sourced<Volume> Scoop,
    Sourced<Volume> Spoon,
    Sourced<Volume> HalfSpoon,
    Sourced<Volume> SyringeStep,
    Sourced<Mass> ScaleDivision);
