using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Costs;
using StudioBot.Records.Materials;
using StudioBot.Records.Pieces;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Recording;

/// <summary>Prices of pieces in the studio's one currency, and what their materials cost.</summary>
internal static class Priced
{
    /// <summary>The trouble with a currency that is not the studio's; none where it is, or none was said.</summary>
    public static Reply? Against(Price? price, string sample, Writing writing) =>
        price?.Currency is { } said && said != Currency(writing)
            ? TalkedOf.Trouble(
                $"This studio counts in {Currency(writing)}, not {said}. Nothing recorded.", sample)
            : null;

    /// <summary>85.00 EUR.</summary>
    public static string Words(Money sum, Writing writing) => $"{sum} {Currency(writing)}".TrimEnd();

    /// <summary>What went into a piece at what it had cost, with what ran off and stayed in the cups; what the books
    /// did not take from the shelf at stock cost, as far as it is known. None where nothing is on record.</summary>
    public static StockCost? Materials(Piece piece, Writing writing)
    {
        var materials = writing.Session.Materials.All();
        var booked = Booked(piece, writing);
        List<Need> open = [.. piece.Parts
            .Where(part => booked.All(line => line.MaterialId != part.MaterialId))
            .Select(part => new Need(
                materials.First(material => material.Id == part.MaterialId), Need.UnitsOf(part.Amount)))];
        if (booked.All(line => line.Reason != StockReason.Coated))
        {
            open.AddRange(Coats(piece, materials, writing));
        }

        if (booked.Count == 0 && open.Count == 0)
        {
            return null;
        }

        var rest = StockCost.Of(open, writing.Studio);
        var sums = booked.GroupBy(line => line.MaterialId).Select(same => (
            materials.First(material => material.Id == same.Key).Name, Cost: same.Sum(line => line.Cost))).ToList();
        return new StockCost(
            [.. sums.Where(row => row.Cost > 0).Concat(rest.Rows).OrderByDescending(row => row.Item2)],
            [.. sums.Where(row => row.Cost <= 0).Select(row => row.Name).Concat(rest.Unpriced)]);
    }

    // The lines that its pour and its coats drew; several pieces of one act share them by their faces.
    private static List<(long MaterialId, StockReason Reason, decimal Cost)> Booked(Piece piece, Writing writing)
    {
        var session = writing.Session;
        var acts = session.Pieces.Lines(piece.Number)
            .Where(line => line.What is PieceEvent.Poured or PieceEvent.Coated)
            .Select(line => line.ActId)
            .Distinct();
        List<(long, StockReason, decimal)> lines = [];
        foreach (var act in session.Acts.These(acts))
        {
            var faces = session.Pieces.NumbersOf(act.Id).Select(session.Pieces.Find).OfType<Piece>()
                .Sum(one => one.Surface.Face.SquareCentimetres);
            var share = (decimal)(piece.Surface.Face.SquareCentimetres / faces);
            lines.AddRange(session.Stock.Of(act)
                .Where(line => line.Reason is StockReason.Poured or StockReason.Coated or StockReason.Returned)
                .Select(line => (
                    line.MaterialId, line.Reason, share * (line.Fills ? -line.Worth.Sum : line.Worth.Sum))));
        }

        return lines;
    }

    // Books that opened with a coat know how much it took. Of a coat without lots, the part is the first there is.
    private static IEnumerable<Need> Coats(Piece piece, IReadOnlyList<Material> materials, Writing writing)
    {
        foreach (var coat in writing.Session.Pieces.Lines(piece.Number)
            .Select(line => line.What).OfType<PieceEvent.Coated>().Select(coated => coated.Coat))
        {
            var ofLots = writing.Session.Lots.Of(coat.LotIds).Select(lot => lot.MaterialId).ToHashSet();
            foreach (var (form, volume) in new[] { (MaterialForm.ResinA, coat.A), (MaterialForm.HardenerB, coat.B) })
            {
                var parts = materials.Where(one => one.Form == form).ToList();
                if ((parts.FirstOrDefault(one => ofLots.Contains(one.Id)) ?? parts.FirstOrDefault()) is { } material)
                {
                    yield return new Need(material, volume.Millilitres);
                }
            }
        }
    }

    private static string Currency(Writing writing) => writing.Session.Studio.Settings()?.Currency ?? "";
}
