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

    private static readonly LotSlot Lot = new() { IsRequired = true };
    private static readonly TextSlot Why = new("a reason", "yellowed") { After = Lot };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "stop", Room.Sharing, "A lot that is not to be used any more.",
        [Lot, Why],
        ["stop lot H-12 yellowed"])
    {
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

        List<Piece> pieces = [.. lots.SelectMany(one => LotReach.Of(one.Lot.Id, writing))
            .DistinctBy(piece => piece.Number)
            .OrderBy(piece => piece.Number)];
        Tell(lots, pieces, why, writing);
        return new Reply(
            [
                new Block.Headline($"{Named(lots)} stopped: nothing is taken from it any more."),
                .. lots.Select(one => one.Material).DistinctBy(material => material.Id).Take(3)
                    .Select(material => new Block.Line(InUse(material, writing))),
                new Block.Line(pieces.Count == 0
                    ? "No piece is known to hold it."
                    : $"{Pieces(pieces)} took from it: {Told(pieces, writing)}"),
            ],
            []);
    }

    // The makers of pieces that took from it, but for who says so.
    private static void Tell(
        IReadOnlyList<(Lot Lot, Material Material)> lots, IReadOnlyList<Piece> pieces, string? why, Writing writing)
    {
        foreach (var (maker, own) in Makers(pieces, writing))
        {
            writing.Tell(maker, new Reply(
                new Block.Headline(
                    $"{Named(lots)} ({lots[0].Material.Name}) was stopped{(why is null ? "" : $": {why}")}."),
                new Block.Line($"{Pieces(own)} of yours took from it.")));
        }
    }

    private static IEnumerable<(Records.Members.Member Maker, IReadOnlyList<Piece> Own)> Makers(
        IReadOnlyList<Piece> pieces, Writing writing) =>
        from own in pieces.GroupBy(piece => piece.Maker)
        let maker = writing.MemberNamed(own.Key)
        where maker is not null && maker.Id != writing.Author.Id
        select (maker, (IReadOnlyList<Piece>)[.. own]);

    private static string Told(IReadOnlyList<Piece> pieces, Writing writing) =>
        Makers(pieces, writing).Select(one => one.Maker.Name).ToList() is { Count: > 0 } told
            ? $"{Sentences.And(told)} {(told.Count == 1 ? "is" : "are")} told."
            : "nobody else has to be told.";

    private static string Named(IReadOnlyList<(Lot Lot, Material Material)> lots)
    {
        List<string> labels = [.. lots.Select(one => one.Lot.Label!).Distinct(StringComparer.OrdinalIgnoreCase)];
        return $"{(labels.Count == 1 ? "Lot" : "Lots")} {Sentences.And(labels)}";
    }

    private static string Pieces(IReadOnlyList<Piece> pieces) =>
        (pieces.Count == 1 ? "Piece " : "Pieces ")
        + string.Join(' ', pieces.Take(MostNamed).Select(piece => piece.Number))
        + (pieces.Count > MostNamed ? $" and {pieces.Count - MostNamed} more" : "");

    private static string InUse(Material material, Writing writing)
    {
        var left = writing.Session.Lots.All()
            .Where(lot => lot.MaterialId == material.Id && lot.Stopped is null)
            .Sum(lot => Need.UnitsOf(lot.Left));
        return $"{Sentences.Capital(material.Name)} in use: {Show.Amount(new Need(material, left).Amount)}.";
    }
}
