namespace StudioBot.Craft.Tests.Whole.ReadyTruth;

/// <summary>A studio and the pieces it pours one after another, in truth.</summary>
internal sealed class TrueStudio
{
    private const int Pieces = 8;
    private const int First = 30;                   // its room has been read for a month before the first pour
    private const int Apart = 60;                   // days from pour to pour: nearly always the one before is coated

    /// <summary>The studio of this number in the run of this seed.</summary>
    public TrueStudio(int seed, int number)
    {
        var dice = new Dice(seed, number);
        var room = new TrueRoom(dice, First + (Pieces - 1) * Apart + TruePiece.Longest + 1);
        var traits = StudioTraits.Of(dice);
        Poured = [.. Enumerable.Range(0, Pieces).Select(i => new TruePiece(dice, traits, room, First + i * Apart))];
    }

    /// <summary>Its pieces in the order of their pours.</summary>
    public IReadOnlyList<TruePiece> Poured { get; }
}
