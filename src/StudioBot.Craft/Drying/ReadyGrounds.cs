namespace StudioBot.Craft.Drying;

/// <summary>What a ready day rests on besides common practice.</summary>
/// <param name="OwnPieces">The studio's finished pieces that taught its shift.</param>
/// <param name="Words">The maker's words on this piece that count.</param>
/// <param name="Weighings">The weighings used.</param>
/// <param name="Noted">The weighings noted but not used.</param>
/// <param name="Use">Why, or why not.</param>
/// <param name="Pace">What the room's pace rests on.</param>
public sealed record ReadyGrounds(
    int OwnPieces, int Words, int Weighings, int Noted, WeighingsUse Use, PaceGrounds Pace)
{
    /// <summary>Nothing but common practice.</summary>
    public bool IsPracticeOnly => OwnPieces == 0 && Words == 0 && Weighings == 0;
}
