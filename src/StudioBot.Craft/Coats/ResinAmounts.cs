using StudioBot.Craft.Units;

namespace StudioBot.Craft.Coats;

/// <summary>A mixed amount of resin, in its two parts.</summary>
public sealed record ResinAmounts(ResinPart PartA, ResinPart PartB)
{
    /// <summary>Both together.</summary>
    public Volume Volume => PartA.Volume + PartB.Volume;

    /// <summary>Both together.</summary>
    public Mass Mass => PartA.Mass + PartB.Mass;

    /// <summary>An equal share of it.</summary>
    /// <param name="cups">1 or more.</param>
    public ResinAmounts Share(int cups) => new(
        new ResinPart(PartA.Volume / cups, PartA.Mass / cups), new ResinPart(PartB.Volume / cups, PartB.Mass / cups));
}
