using System.Globalization;
using System.Text.RegularExpressions;
using StudioBot.Craft.Reminders;
using StudioBot.Records;
using StudioBot.Records.Acts;
using StudioBot.Records.Stock;
using Booked = StudioBot.Records.Acts.Act;

namespace StudioBot.Chat.Sharing;

/// <summary>Follows a lot through the books: into mixtures and mixtures of those, into pieces, and out of the studio's
/// hands.</summary>
internal sealed partial class LotTrace
{
    private readonly StudioView view;
    private readonly StudioZone zone;
    private readonly Dictionary<long, Booked> acts = [];
    private readonly Dictionary<TrailVessel, LotReached> reached = [];
    private readonly Dictionary<(TrailVessel From, long Act, StockReason Reason, bool Fills), LotUse> uses = [];
    private readonly Queue<TrailVessel> open = new();

    private LotTrace(long lotId, StudioView view, StudioZone zone)
    {
        (this.view, this.zone) = (view, zone);
        Root = view.Trails.Lot(lotId);
        reached[Root] = LotReached.FromTheBeginning;
        open.Enqueue(Root);
        while (open.TryDequeue(out var vessel))
        {
            Follow(vessel, reached[vessel]);
        }

        Uses = [.. uses.Values.OrderByDescending(use => use.IsDirect).ThenBy(use => use.Act.Id)];
        Pieces = [.. view.Trails.Ends(Uses.SelectMany(use => use.Pieces).Distinct()).Select(end => new LotPiece(
            end,
            [.. Uses.Where(use => use.Pieces.Contains(end.Number)).OrderByDescending(use => use.IsSure)]))];
    }

    /// <summary>The lot.</summary>
    public TrailVessel Root { get; }

    /// <summary>Every step: those from the lot itself first, then in the order they were booked.</summary>
    public IReadOnlyList<LotUse> Uses { get; }

    /// <summary>The pieces it went into, each once, by number.</summary>
    public IReadOnlyList<LotPiece> Pieces { get; }

    /// <summary>Follows this lot to all its ends.</summary>
    public static LotTrace Of(long lotId, StudioView view, StudioZone zone) => new(lotId, view, zone);

    private void Follow(TrailVessel vessel, LotReached since)
    {
        List<TrailLine> lines = vessel.LotId is { } id
            ? [.. view.Trails.Lines(id).Where(line =>
                line.Reason is not (StockReason.Opening or StockReason.Bought or StockReason.Made))]
            : [];
        var coated = vessel.LotId is { } own ? view.Trails.CoatedWith(own) : [];
        var poured = vessel.Batch is { } batch ? view.Trails.PouredFrom(batch) : [];
        Learn(lines.Select(line => line.ActId).Concat(coated.Concat(poured).Select(piece => piece.ActId)));

        var pieces = view.Trails.PiecesOf(lines.Select(line => line.ActId).Distinct());
        var made = view.Trails.MadeBy(lines
            .Where(line => line is { Reason: StockReason.Mixed, Fills: false })
            .Select(line => line.ActId)
            .Distinct());
        foreach (var same in lines.GroupBy(line => (line.ActId, line.Reason, line.Fills)))
        {
            var act = acts[same.Key.ActId];
            Step(since, new LotUse(vessel, act, same.Key.Reason)
            {
                IsSure = Names(vessel, act),
                Fills = same.Key.Fills,
                Amounts = [.. same.Select(line => line.Amount)],
                Pieces = Numbers(pieces.Where(piece => piece.ActId == act.Id), same.Key.Reason),
                Into = same.Key is { Reason: StockReason.Mixed, Fills: false } ? Made(act, made[act.Id]) : [],
            });
        }

        // Books that opened with a coat know its lots, and not how much of them it took; and a pour may name its batch
        // where nobody measured what it took.
        Untold(StockReason.Coated, coated, vessel, since, lines, _ => true);
        Untold(StockReason.Poured, poured, vessel, since, lines, act => Names(vessel, act));
    }

    private void Untold(
        StockReason reason,
        IEnumerable<TrailPiece> pieces,
        TrailVessel vessel,
        LotReached since,
        List<TrailLine> lines,
        Func<Booked, bool> isNamed)
    {
        foreach (var same in pieces
            .Where(piece => !lines.Exists(line => line.ActId == piece.ActId && line.Reason == reason))
            .GroupBy(piece => piece.ActId))
        {
            var act = acts[same.Key];
            Step(since, new LotUse(vessel, act, reason)
            {
                IsSure = isNamed(act),
                Pieces = Numbers(same, reason),
            });
        }
    }

    // What was taken before the lot came into this mixture holds nothing of it.
    private void Step(LotReached since, LotUse use)
    {
        if (!since.MayHold(use.Act, zone))
        {
            return;
        }

        use = use with { IsSure = use.IsSure && since.SurelyHolds(use.Act), IsDirect = use.From == Root };
        uses[(use.From, use.Act.Id, use.Reason, use.Fills)] = use;
        foreach (var into in use.Into)
        {
            var before = reached.GetValueOrDefault(into);
            var now = LotReached.Earlier(before, use.Act, use.IsSure);
            if (now != before)
            {
                reached[into] = now;
                open.Enqueue(into);
            }
        }
    }

    // What was added to a batch that stands in no stock, or was a powder that takes no room, is known by its words.
    private List<TrailVessel> Made(Booked act, IEnumerable<TrailVessel> made)
    {
        List<TrailVessel> known = [.. made];
        return known.Count == 0 && BatchIn(act) is { } number && view.Trails.Batch(number) is { } batch
            ? [batch]
            : known;
    }

    private void Learn(IEnumerable<long> ids)
    {
        foreach (var act in view.Acts.These(ids.Distinct().Where(id => !acts.ContainsKey(id))))
        {
            acts[act.Id] = act;
        }
    }

    private static IReadOnlyList<int> Numbers(IEnumerable<TrailPiece> pieces, StockReason reason) =>
    [
        .. pieces
            .Where(piece => reason == (piece.IsCoat ? StockReason.Coated : StockReason.Poured))
            .Select(piece => piece.Number)
            .Distinct(),
    ];

    // Its label or its batch stands in the words; what books open with was told, not taken.
    private static bool Names(TrailVessel vessel, Booked act) => act.Kind == ActRecords.Opening
        || (vessel.Label is { } label && Words(act).Contains(label, StringComparer.OrdinalIgnoreCase))
        || (vessel.Batch is { } batch && BatchIn(act) == batch);

    // batch 14 or b14.
    private static int? BatchIn(Booked act)
    {
        var words = Words(act);
        for (var at = 0; at < words.Count; at++)
        {
            var number = words[at].Equals("batch", StringComparison.OrdinalIgnoreCase) && at + 1 < words.Count
                ? words[at + 1]
                : words[at].StartsWith('b') || words[at].StartsWith('B') ? words[at][1..] : "";
            if (int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var batch))
            {
                return batch;
            }
        }

        return null;
    }

    private static List<string> Words(Booked act) => [.. Word().Matches(act.Words).Select(match => match.Value)];

    [GeneratedRegex(@"[\p{L}\d][\p{L}\d-]*", RegexOptions.NonBacktracking)]
    private static partial Regex Word();
}
