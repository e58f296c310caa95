using System.Globalization;
using StudioBot.Chat.Asking;
using StudioBot.Chat.Coats;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Costs;
using StudioBot.Craft.Reminders;
using StudioBot.Records.Materials;
using StudioBot.Records.Pieces;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Sharing;

/// <summary>A week in five lines: used, bought, low, pieces, who used what. What was undone is not in it.</summary>
internal sealed class WeekSummary
{
    // As many names in a line as fit; one always does.
    private const int MostNamed = 3;

    private readonly Studio _studio;
    private readonly DateTimeOffset _now;
    private readonly StudioZone _zone;
    private readonly bool _withMoney;
    private readonly IReadOnlyList<StockLine> _lines;
    private readonly IReadOnlyList<PieceLine> _events;
    private readonly WeekSpan _span;
    private readonly IReadOnlyList<ShelfNeed> _needs;
    private readonly IReadOnlyList<ShelfNeed> _low;
    private readonly Dictionary<long, string> _materials;
    private readonly IReadOnlyList<(int Piece, DateTimeOffset Closes)> _windows;
    private readonly string _cost;

    /// <summary>Reads what there is of it.</summary>
    /// <param name="span">The time it is about; levels and windows are those of now.</param>
    /// <param name="studio">The records.</param>
    /// <param name="now">The moment.</param>
    /// <param name="zone">The studio's wall clock.</param>
    /// <param name="withMoney">Whether sums are told: not where anybody may read them.</param>
    public WeekSummary(WeekSpan span, Studio studio, DateTimeOffset now, StudioZone zone, bool withMoney)
    {
        (_span, _studio, _now, _zone, _withMoney) = (span, studio, now, zone, withMoney);
        var view = studio.View;
        _needs = new ShelfNeeds(studio, now).All();
        _lines = view.Stock.HoldingBetween(span.From, span.Until);
        _events = view.Pieces.LinesBetween(span.From, span.Until);
        _low = [.. _needs.Where(need => need.IsWanted)];
        _materials = _needs.ToDictionary(need => need.Material.Id, need => Labels.Short(need.Material.Name));
        _windows = [.. Windows()];
        _cost = Cost();
    }

    /// <summary>The lines under a headline.</summary>
    /// <param name="room">How many lines of a phone there are for it.</param>
    public IReadOnlyList<Block> Within(int room) =>
        Enumerable.Range(1, MostNamed).Select(fewer => Lines(MostNamed + 1 - fewer))
            .FirstOrDefault(lines => LineBudget.Of(new Reply(lines)) <= room) ?? Lines(1);

    /// <summary>The picture of it; none where nothing was used.</summary>
    /// <param name="title">The headline.</param>
    public ReplyFile? Picture(string title) => WeekSketch.Of(title, _span, _lines, _needs);

    private IReadOnlyList<Block> Lines(int most) =>
    [
        new Block.Line($"Used: {Named(Use(_lines), most, "nothing")}."),
        new Block.Line($"Bought: {Named(Sums(_lines.Where(IsBought), fills: true), most, "nothing")}{_cost}."),
        new Block.Line($"Low now: {Few([.. _low.Select(ToBuy)], most, "none")}."),
        new Block.Line($"Pieces: {Stages()}. {Waiting(most)}"),
        new Block.Line($"Who used: {Members(most)}.{Sentences.Invented(_studio)}"),
    ];

    // White 85 ml (buy 1 x 1 L); medium none (mix 400 ml); red none (ordered).
    private string ToBuy(ShelfNeed need)
    {
        var left = need.Level.IsOut ? "none" : Show.Amount(need.Level.Left);
        var what = need.IsOrdered ? "ordered"
            : need.IsMixed ? $"mix {need.Words()}"
            : $"buy {need.Packs.Words}";
        return $"{_materials[need.Material.Id]} {left} ({what})";
    }

    private static bool IsBought(StockLine line) => line.Reason is StockReason.Bought;

    private static IReadOnlyList<(long Material, Amount Amount)> Use(IEnumerable<StockLine> lines) =>
        Sums(lines.Where(line => StockUse.IsUse(line.Reason)), fills: false);

    // Of each material what came in or went out on the whole, the largest figure first.
    private static IReadOnlyList<(long Material, Amount Amount)> Sums(IEnumerable<StockLine> lines, bool fills) =>
    [
        .. lines.GroupBy(line => line.MaterialId)
            .Select(same => (
                Material: same.Key,
                Like: same.First().Amount,
                Units: same.Sum(line => line.Fills == fills ? Need.UnitsOf(line.Amount) : -Need.UnitsOf(line.Amount))))
            .Where(sum => sum.Units > 0)
            .OrderByDescending(sum => sum.Units).ThenBy(sum => sum.Material)
            .Select(sum => (sum.Material, ShelfLevel.Like(sum.Like, sum.Units))),
    ];

    private string Named(IReadOnlyList<(long Material, Amount Amount)> sums, int most, string none) =>
        Few([.. sums.Select(sum => $"{_materials[sum.Material]} {Show.Amount(sum.Amount)}")], most, none);

    private static string Few(List<string> words, int most, string none) => words.Count switch
    {
        0 => none,
        var count when count <= most => string.Join(", ", words),
        var count => $"{string.Join(", ", words.Take(most))} and {count - most} more",
    };

    private string Cost()
    {
        var bought = _lines.Where(IsBought).Select(line => line.LotId).ToHashSet();
        if (!_withMoney || bought.Count == 0)
        {
            return "";
        }

        List<Lot> lots = [.. _studio.View.Lots.Of(bought)];
        var sum = lots.Select(lot => lot.Price).OfType<Money>().Aggregate(default(Money), (all, one) => all + one);
        var unpriced = lots.Count(lot => lot.Price is null);
        return (unpriced == lots.Count ? "" : $", for {sum} {_studio.View.Studio.Settings()?.Currency}".TrimEnd())
            + (unpriced == 0 ? "" : $", {unpriced} without a price");
    }

    private string Stages()
    {
        List<string> stages =
        [
            .. Counted<PieceEvent.Poured>("poured"),
            .. Counted<PieceEvent.Dry>("ready"),
            .. Counted<PieceEvent.Coated>("coated"),
            .. Counted<PieceEvent.Cured>("cured"),
            .. Counted<PieceEvent.Sold>("sold"),
        ];
        return stages.Count == 0 ? "nothing new" : string.Join(", ", stages);
    }

    // A piece counts once, however many coats it got.
    private IEnumerable<string> Counted<T>(string word)
        where T : PieceEvent
    {
        var count = _events.Where(line => line.What is T).Select(line => line.Number).Distinct().Count();
        return count == 0 ? [] : [$"{count} {word}"];
    }

    private IEnumerable<(int Piece, DateTimeOffset Closes)> Windows()
    {
        List<int> coated = [.. _studio.View.Pieces.In(Stage.Coated).Select(piece => piece.Number)];
        return CoatReckoning.Of(coated, _studio.View, _studio.Practice)
            .Where(coat => coat is { HasFailed: false, IsSanded: false })
            .Select(coat => (coat.Piece, Closes: coat.KnownWindow?.ClosesFrom ?? _now))
            .Where(window => window.Closes > _now)
            .OrderBy(window => window.Closes);
    }

    private string Waiting(int most) => _windows switch
    {
        [] => "No recoat window waits.",
        [var (piece, closes)] => $"Recoat window: {piece}, until {Moment(closes)}.",
        [var (piece, closes), ..] when most > 1 =>
            $"Recoat windows: {_windows.Count}, the first is {piece}, until {Moment(closes)}.",
        _ => $"Recoat windows: {_windows.Count}.",
    };

    private string Moment(DateTimeOffset moment) =>
        _zone.LocalOf(moment).ToString("ddd d MMM HH:mm", CultureInfo.InvariantCulture);

    private string Members(int most)
    {
        var names = _studio.View.Members.Names();
        List<string> members =
        [
            .. _lines.GroupBy(line => line.MemberId)
                .Select(own => (Name: own.Key is { } id ? Labels.Short(names[id]) : "the studio", Used: Use(own)))
                .Where(own => own.Used.Count > 0)
                .OrderByDescending(own => own.Used.Count).ThenBy(own => own.Name, StringComparer.Ordinal)
                .Select(own => $"{own.Name} {Named([own.Used[0]], 1, "")}"
                    + (own.Used.Count > 1 ? $" + {own.Used.Count - 1}" : "")),
        ];
        return Few(members, most, "nobody");
    }
}
