using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Costs;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using StudioBot.Records.Pieces;

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

    /// <summary>What went into a piece at stock cost, as far as it is known; none where nothing is on record.</summary>
    public static StockCost? Materials(Piece piece, Writing writing)
    {
        var materials = writing.Session.Materials.All();
        var needs = piece.Parts.Select(part => new Need(
            materials.First(material => material.Id == part.MaterialId), Need.UnitsOf(part.Amount))).ToList();
        var lots = writing.Session.Lots.All();
        var coats = writing.Session.Pieces.Lines(piece.Number).Select(line => line.What).OfType<PieceEvent.Coated>();
        foreach (var coat in coats.Select(coated => coated.Coat))
        {
            var ofLots = lots.Where(lot => coat.LotIds.Contains(lot.Id)).Select(lot => lot.MaterialId).ToHashSet();
            Add(MaterialForm.ResinA, coat.A, ofLots);
            Add(MaterialForm.HardenerB, coat.B, ofLots);
        }

        return needs.Count == 0 ? null : StockCost.Of(needs, writing.Studio);

        // Of a coat without lots, the part is the first the studio has.
        void Add(MaterialForm form, Volume volume, HashSet<long> ofLots)
        {
            var parts = materials.Where(one => one.Form == form).ToList();
            if ((parts.FirstOrDefault(one => ofLots.Contains(one.Id)) ?? parts.FirstOrDefault()) is { } material)
            {
                needs.Add(new Need(material, volume.Millilitres));
            }
        }
    }

    private static string Currency(Writing writing) => writing.Session.Studio.Settings()?.Currency ?? "";
}
