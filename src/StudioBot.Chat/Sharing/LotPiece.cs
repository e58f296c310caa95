using StudioBot.Records.Pieces;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Sharing;

/// <summary>A piece that a lot went into, once, by however many ways.</summary>
/// <param name="End">Whose it is and what became of it.</param>
/// <param name="Ways">By which it came there, the surest and shortest first; at least one.</param>
internal sealed record LotPiece(TrailEnd End, IReadOnlyList<LotUse> Ways)
{
    /// <summary>One way is sure.</summary>
    public bool IsSure => Ways[0].IsSure;

    /// <summary>What became of it: 17 sold, gallery; none while it is in work.</summary>
    public string? Fate => End.Stage switch
    {
        Stage.Sold => $"{End.Number} sold{Said}",
        Stage.Kept => $"{End.Number} kept",
        Stage.Bin => $"{End.Number} thrown away",
        _ => null,
    };

    private string Said => End.Words is not { } words ? ""
        : words.Length <= MostWords ? $": {words}"
        : $": {words[..MostWords].TrimEnd()}…";

    // Two lines of a phone.
    private const int MostWords = 80;
}
