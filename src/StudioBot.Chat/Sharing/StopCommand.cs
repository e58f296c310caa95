using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Records.Materials;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Sharing;

/// <summary><c>stop lot H-12 yellowed</c>: a lot that is not to be used any more.</summary>
internal sealed class StopCommand : Act
{
    private const int MostNamed = 8;
    private const int MostSold = 2;
    private const int MostMaterials = 2;

    private static readonly LotSlot Lot = new() { IsRequired = true };
    private static readonly TextSlot Why = new("a reason", "yellowed") { After = Lot };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "stop", Room.Sharing, "A lot that is not to be used any more.",
        [Lot, Why],
        ["stop lot H-12 yellowed"])
    {
        More = "Who made something with it is told.",
        Also = ["stopped"],
    };

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var lots = LotsNamed.Of(said.Of(Lot), writing);
        var why = said.Has(Why) ? said.Of(Why) : null;
        foreach (var (lot, _) in lots)
        {
            writing.Session.Stock.Stop(lot.Id, why, writing.Act);
        }

        var pieces = Reached(lots, writing);
        Tell(lots, pieces, why, writing);
        return new Reply(
            [
                new Block.Headline($"{Named(lots)} stopped: nothing is taken from it any more."),
                .. lots.Select(one => one.Material).DistinctBy(material => material.Id).Take(MostMaterials)
                    .Select(material => new Block.Line(InUse(material, writing))),
                .. pieces.Count == 0
                    ? [new Block.Line("No piece is known to hold it.")]
                    : Holding($"took from it: {Told(pieces, writing)}", pieces),
            ],
            [.. lots.Select(one => one.Lot.Label!).Distinct(StringComparer.OrdinalIgnoreCase).Take(MostMaterials)
                .Select(label => new Button(Labels.Short($"Where {label} went"), $"lot {label}"))]);
    }

    // A piece that two of the lots went into stands once, and is sure where one of them is.
    private static IReadOnlyList<LotPiece> Reached(
        IReadOnlyList<(Lot Lot, Material Material)> lots, Writing writing) =>
    [
        .. lots.SelectMany(one => LotTrace.Of(one.Lot.Id, writing.Session, writing.Studio.Zone).Pieces)
            .OrderByDescending(piece => piece.IsSure)
            .DistinctBy(piece => piece.End.Number)
            .OrderBy(piece => piece.End.Number),
    ];

    // The makers of pieces that took from it, but for who says so.
    private static void Tell(
        IReadOnlyList<(Lot Lot, Material Material)> lots, IReadOnlyList<LotPiece> pieces, string? why, Writing writing)
    {
        foreach (var (maker, own) in Makers(pieces, writing))
        {
            writing.Tell(maker, new Reply(
            [
                new Block.Headline(
                    $"{Named(lots)} ({lots[0].Material.Name}) was stopped{(why is null ? "" : $": {why}")}."),
                .. Holding("of yours took from it.", own),
            ]));
        }
    }

    private static IEnumerable<(Records.Members.Member Maker, IReadOnlyList<LotPiece> Own)> Makers(
        IReadOnlyList<LotPiece> pieces, Writing writing) =>
        from own in pieces.GroupBy(piece => piece.End.Maker)
        let maker = writing.MemberNamed(own.Key)
        where maker is not null && maker.Id != writing.Author.Id
        select (maker, (IReadOnlyList<LotPiece>)[.. own]);

    private static string Told(IReadOnlyList<LotPiece> pieces, Writing writing) =>
        Makers(pieces, writing).Select(one => one.Maker.Name).ToList() is { Count: > 0 } told
            ? $"{Sentences.And(told)} {(told.Count == 1 ? "is" : "are")} told."
            : "nobody else has to be told.";

    // Which pieces, which of them only by assumption, and which are out of the house.
    private static IEnumerable<Block> Holding(string tookFromIt, IReadOnlyList<LotPiece> pieces)
    {
        yield return new Block.Line($"{Pieces(pieces)} {tookFromIt}");
        var assumed = pieces.Where(piece => !piece.IsSure).ToList();
        if (assumed.Count > 0)
        {
            yield return new Block.Line(assumed.Count == pieces.Count
                ? "Assumed, as the oldest open lot: nobody named it."
                : $"Assumed only, not named: {Numbers(assumed)}.");
        }

        var gone = pieces.Where(piece => piece.End.Stage == Stage.Sold).ToList();
        foreach (var piece in gone.Take(MostSold))
        {
            yield return new Block.Line($"{piece.Fate}.");
        }

        if (gone.Count > MostSold)
        {
            yield return new Block.Line($"Sold too: {Numbers([.. gone.Skip(MostSold)])}.");
        }
    }

    private static string Named(IReadOnlyList<(Lot Lot, Material Material)> lots)
    {
        List<string> labels = [.. lots.Select(one => one.Lot.Label!).Distinct(StringComparer.OrdinalIgnoreCase)];
        return $"{(labels.Count == 1 ? "Lot" : "Lots")} {Sentences.And(labels)}";
    }

    private static string Pieces(IReadOnlyList<LotPiece> pieces) =>
        (pieces.Count == 1 ? "Piece " : "Pieces ") + Numbers(pieces);

    private static string Numbers(IReadOnlyList<LotPiece> pieces) =>
        string.Join(' ', pieces.Take(MostNamed).Select(piece => piece.End.Number))
        + (pieces.Count > MostNamed ? $" and {pieces.Count - MostNamed} more" : "");

    private static string InUse(Material material, Writing writing) =>
        $"{Sentences.Capital(material.Name)} in use: {new Levels(writing).Say(material)}.";
}
