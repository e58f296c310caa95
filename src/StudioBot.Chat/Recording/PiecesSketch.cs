using StudioBot.Chat.Coats;
using StudioBot.Chat.Drying;
using StudioBot.Chat.Pictures;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Drying;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary>What the picture of several pieces shows, out of the records. Those that are out of the studio's hands are
/// not in it.</summary>
/// <param name="reckoning">What is known of all pieces.</param>
/// <param name="moment">The moment of asking.</param>
/// <param name="studio">Whose they are.</param>
internal sealed class PiecesSketch(PieceReckoning reckoning, StudioMoment moment, Studio studio)
{
    private const string ByHand = "What wants a hand comes first.";

    /// <summary>The picture of a page, in its order; none where no piece of it is in the studio.</summary>
    /// <param name="name">The name of the file.</param>
    /// <param name="title">What stands above it.</param>
    /// <param name="pieces">The pieces of the page, as many as a picture holds at most.</param>
    public ReplyFile? Page(string name, string title, IReadOnlyList<PieceStanding> pieces) =>
        Drawn(name, pieces, (here, coats) => Figures(title, here, coats));

    /// <summary>The picture of those that want a hand and of what comes next, as many as can be read; none where there
    /// is no piece.</summary>
    /// <param name="name">The name of the file.</param>
    /// <param name="pieces">All there are.</param>
    /// <param name="where">Where that is: in the studio, on shelf B.</param>
    public ReplyFile? Foremost(string name, IReadOnlyList<PieceStanding> pieces, string where) =>
        Drawn(name, pieces, (here, coats) => Foremost(here, coats, where));

    /// <summary>What the picture of those that want a hand shows.</summary>
    public PiecesFigures Foremost(IReadOnlyList<PieceStanding> pieces, string where)
    {
        List<PieceStanding> here = [.. pieces.Where(one => !one.IsEnded)];
        return Foremost(here, Coats(here), where);
    }

    private ReplyFile? Drawn(
        string name,
        IReadOnlyList<PieceStanding> pieces,
        Func<List<PieceStanding>, Dictionary<int, CoatReckoning>, PiecesFigures> figures)
    {
        List<PieceStanding> here = [.. pieces.Where(one => !one.IsEnded)];
        if (here.Count == 0)
        {
            return null;
        }

        // Read now: when it is drawn the records are closed.
        var coats = Coats(here);
        return ReplyFile.Picture(name, () => PiecesPicture.Png(figures(here, coats)));
    }

    private Dictionary<int, CoatReckoning> Coats(List<PieceStanding> here)
    {
        List<int> coated = [.. here.Where(one => one.Piece.Stage == Stage.Coated).Select(one => one.Piece.Number)];
        return coated.Count == 0 ? [] : CoatReckoning.Of(coated, studio.View, studio.Practice)
            .Where(coat => coat is { HasFailed: false, IsSanded: false })
            .ToDictionary(coat => coat.Piece);
    }

    private PiecesFigures Foremost(List<PieceStanding> here, Dictionary<int, CoatReckoning> coats, string where)
    {
        var title = $"{(here.Count == 1 ? "1 piece" : $"{here.Count} pieces")} {where}";
        List<PieceStanding> first = [.. here
            .OrderBy(one => Rank(one, coats)).ThenBy(one => Due(one, coats)).ThenBy(one => one.Piece.Number)
            .Take(PiecesPicture.MostRows)];
        return Figures(title, first, coats) with
        {
            Line = here.Count > 1 ? ByHand : "",
            More = here.Count - first.Count,
        };
    }

    private PiecesFigures Figures(
        string title, IReadOnlyList<PieceStanding> here, Dictionary<int, CoatReckoning> coats) => new(
            title,
            "",
            moment.Zone.LocalOf(moment.Now),
            [.. here.Select(one => new PieceRow(
                one.Piece.Number,
                one.Piece.Shelf ?? "",
                one.Size,
                one.InList,
                [.. Past(one), .. ToCome(one, coats.GetValueOrDefault(one.Piece.Number))]))],
            0);

    // An open window first, it closes; then the other work, then what comes by itself.
    private int Rank(PieceStanding one, Dictionary<int, CoatReckoning> coats) => one.Piece.Stage switch
    {
        Stage.Coated when coats.GetValueOrDefault(one.Piece.Number)?.KnownWindow?.IsOpen(moment.Now) == true => 0,
        Stage.Coated => one.HasFailed ? 1 : 3,
        Stage.Ready => 1,
        Stage.Drying => one.Look?.Outlook switch
        {
            ReadyOutlook.Expected({ Advice: not ReadyAdvice.Wait }) => 1,
            ReadyOutlook.NoDay { Kind: NoReadyDay.Overdue } => 1,
            _ => 2,
        },
        _ => 4,
    };

    private static DateTimeOffset Due(PieceStanding one, Dictionary<int, CoatReckoning> coats) =>
        coats.GetValueOrDefault(one.Piece.Number)?.KnownWindow?.ClosesFrom ?? one.Order;

    // From line to line of its book, up to now.
    private IEnumerable<PieceBar> Past(PieceStanding one)
    {
        var (spell, from) = ((PieceSpell?)null, one.Piece.PouredAt);
        foreach (var line in reckoning.Lines(one.Piece.Number).Where(line => line.At <= moment.Now))
        {
            if (!Begins(line.What, out var begun) || begun == spell)
            {
                continue;
            }

            if (spell is { } ended && line.At > from)
            {
                yield return Bar(ended, from, line.At);
            }

            // A book that opened with pieces noted them later than they were poured.
            (spell, from) = (begun, line.What is PieceEvent.Poured ? one.Piece.PouredAt : line.At);
        }

        if (spell is { } lasting && moment.Now > from)
        {
            yield return Bar(lasting, from, moment.Now);
        }
    }

    // Whether something begins with a line, and what: nothing more where the piece is done.
    private static bool Begins(PieceEvent what, out PieceSpell? spell)
    {
        spell = what switch
        {
            PieceEvent.Poured { Stage: Stage.Drying } or PieceEvent.NotYet => PieceSpell.Dried,
            PieceEvent.Poured => PieceSpell.Unnoted,
            PieceEvent.Dry or PieceEvent.Sanded => PieceSpell.Waits,
            PieceEvent.Coated => PieceSpell.Cures,
            PieceEvent.Failed => PieceSpell.Failed,
            PieceEvent.Staged staged => Of(staged.Stage),
            _ => null,
        };
        return spell is not null || what is PieceEvent.Cured or PieceEvent.Staged;
    }

    private static PieceSpell? Of(Stage stage) => stage switch
    {
        Stage.Drying => PieceSpell.Dried,
        Stage.Ready => PieceSpell.Waits,
        Stage.Coated => PieceSpell.Cures,
        _ => null,
    };

    private IEnumerable<PieceBar> ToCome(PieceStanding one, CoatReckoning? coat)
    {
        if (one.Look?.Outlook is ReadyOutlook.Expected(var estimate))
        {
            var now = moment.Zone.LocalOf(moment.Now);
            var earliest = estimate.EarliestDay(moment.Today).ToDateTime(TimeOnly.MinValue);
            yield return new PieceBar(
                PieceSpell.Likely,
                earliest < now ? now : earliest,
                estimate.LatestDay(moment.Today).AddDays(1).ToDateTime(TimeOnly.MinValue));
        }

        if (one.CuredAt is { } cured && cured > moment.Now)
        {
            yield return Bar(PieceSpell.Cures, moment.Now, cured);
        }

        // The late opening and the early closing, as the words have it: then it is surely open.
        if (coat?.KnownWindow is { } window)
        {
            var opens = window.OpensBy < window.ClosesFrom ? window.OpensBy : window.OpensFrom;
            yield return Bar(PieceSpell.Window, opens, window.ClosesFrom);
        }
    }

    private PieceBar Bar(PieceSpell spell, DateTimeOffset from, DateTimeOffset to) =>
        new(spell, moment.Zone.LocalOf(from), moment.Zone.LocalOf(to));
}
