using StudioBot.Chat.Drying;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Drying;
using StudioBot.Craft.Surfaces;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary>How far a piece is, in a few words: its stage and since when, or its outlook while it dries.</summary>
internal sealed class PieceStanding
{
    private readonly StudioMoment _moment;
    private readonly DateTimeOffset? _since;
    private readonly DateTimeOffset? _curedAt;
    private readonly Lazy<PieceOutlook?> _look;

    /// <summary>How far this piece is.</summary>
    /// <param name="piece">Which.</param>
    /// <param name="reckoning">What is known of all pieces.</param>
    /// <param name="moment">The moment it is asked at.</param>
    /// <param name="studio">Whose resin cures how fast.</param>
    public PieceStanding(Piece piece, PieceReckoning reckoning, StudioMoment moment, Studio studio)
    {
        (Piece, _moment) = (piece, moment);
        _look = new Lazy<PieceOutlook?>(() => reckoning.Of(piece.Number));
        var last = reckoning.Lines(piece.Number).LastOrDefault(line => line.What is PieceEvent.Dry
            or PieceEvent.NotYet or PieceEvent.Coated or PieceEvent.Failed or PieceEvent.Sanded or PieceEvent.Cured
            or PieceEvent.Staged or PieceEvent.Kept or PieceEvent.Sold or PieceEvent.Bin);
        _since = last?.At;
        HasFailed = last?.What is PieceEvent.Failed;
        IsSanded = last?.What is PieceEvent.Sanded;
        _curedAt = last is { What: PieceEvent.Coated, At: var coated }
            ? coated + studio.Practice.UsualResin.FullCure.Value
            : null;
    }

    /// <summary>Which piece.</summary>
    public Piece Piece { get; }

    /// <summary>Its outlook; none where it dries no more.</summary>
    public PieceOutlook? Look => _look.Value;

    /// <summary>When its coat is cured, as its words say it; none where no coat cures or nobody noted it.</summary>
    public DateTimeOffset? CuredAt => _curedAt;

    /// <summary>Whether its last coat failed and is still on it.</summary>
    public bool HasFailed { get; }

    /// <summary>Whether its last coat was sanded away.</summary>
    public bool IsSanded { get; }

    /// <summary>Whether it is out of the studio's hands: kept, sold or thrown away.</summary>
    public bool IsEnded => Piece.Stage is Stage.Kept or Stage.Sold or Stage.Bin;

    /// <summary>Its outlook in words; none where it dries no more.</summary>
    public OutlookWords? Outlook => Look is { } look ? new OutlookWords(look, _moment) : null;

    /// <summary>17 B3 30cm panel.</summary>
    public string Name => string.Join(' ', new[] { $"{Piece.Number}", Piece.Shelf ?? "", Size }
        .Where(word => word.Length > 0));

    /// <summary>30cm panel.</summary>
    public string Size => SurfaceSlot.Words(new SurfaceSet(Piece.Surface));

    /// <summary>The answer about it: ready 3–9 Dec, likely 5 Dec; dry since 24 Nov.</summary>
    public string Answer => (Piece.Stage, Outlook) switch
    {
        (Stage.Drying, { } outlook) => outlook.Answer,
        (Stage.Ready, _) => IsSanded ? $"sanded{Day}, ready for a coat" : $"dry{Since}, ready for a coat",
        (Stage.Coated, _) when HasFailed => $"coat failed{Day}: sand it",
        (Stage.Coated, _) => $"coated{Day}, {(_curedAt is { } at ? $"cured about {On(at)}" : "still curing")}",
        (Stage.Cured, _) => $"cured{Since}",
        (Stage.Kept, _) => $"kept{Since}",
        (Stage.Sold, _) => $"sold{Day}",
        _ => $"thrown away{Day}",
    };

    /// <summary>The same in a list: 3–9 Dec; dry 24 Nov.</summary>
    public string InList => (Piece.Stage, Outlook) switch
    {
        (Stage.Drying, { } outlook) => outlook.InList,
        (Stage.Ready, _) => IsSanded ? $"sanded{Day}" : $"dry{Day}",
        (Stage.Coated, _) when HasFailed => "coat failed",
        (Stage.Coated, _) => _curedAt is { } at ? $"cures to {On(at)}" : "cures",
        (Stage.Cured, _) => $"cured{Day}",
        (Stage.Kept, _) => $"kept{Day}",
        (Stage.Sold, _) => $"sold{Day}",
        _ => $"binned{Day}",
    };

    /// <summary>The day it may leave its shelf: dry by the late end, cured, or today; none where nobody can say.
    /// </summary>
    public DateOnly? FreeOn => Piece.Stage switch
    {
        Stage.Drying => Look?.Outlook is ReadyOutlook.Expected(var estimate)
            ? estimate.LatestDay(_moment.Today)
            : null,
        Stage.Coated when !HasFailed => _curedAt is { } at ? _moment.Day(at) : null,
        _ => _moment.Today,
    };

    /// <summary>By what a list is put in order: what wants a hand first, then the likely days, then the rest.</summary>
    public DateTimeOffset Order => Piece.Stage == Stage.Drying
        ? Look?.LikelyAt ?? DateTimeOffset.MaxValue
        : _since ?? Piece.PouredAt;

    private string Since => _since is { } at ? $" since {On(at)}" : "";

    private string Day => _since is { } at ? $" {On(at)}" : "";

    private string On(DateTimeOffset at) => Show.Day(_moment.Day(at));
}
