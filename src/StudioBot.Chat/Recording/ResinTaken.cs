using StudioBot.Chat.Replies;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Recording;

/// <summary>One part of a coat as it leaves the shelf.</summary>
/// <param name="Name">The material, or which part where the studio has none.</param>
/// <param name="Wanted">How much was mixed.</param>
/// <param name="FromLots">The lots it left; empty where it could not be booked.</param>
/// <param name="Left">What is left of the material.</param>
/// <param name="Missing">Why it could not be booked; none where it was.</param>
/// <param name="Stopped">Why a lot it left is stopped; none where none is.</param>
internal sealed record ResinTaken(
    string Name, Volume Wanted, IReadOnlyList<LotShare> FromLots, Amount? Left, string? Missing, string? Stopped)
{
    /// <summary>The labels of its lots.</summary>
    public IEnumerable<string> Labels => FromLots.Select(share => share.Label).OfType<string>().Distinct();

    /// <summary>Takes a part from its named lots in their order, else from the oldest first; all of it or nothing.
    /// </summary>
    /// <param name="form">Which part.</param>
    /// <param name="named">Its material, where one was named.</param>
    /// <param name="labels">The lots that were named, of both parts.</param>
    /// <param name="wanted">How much; above zero.</param>
    /// <param name="writing">Where it is written.</param>
    public static ResinTaken From(
        MaterialForm form, Material? named, IReadOnlyList<string> labels, Volume wanted, Writing writing)
    {
        var materials = writing.Session.Materials.All().Where(one => one.Form == form).ToList();
        var lots = writing.Session.Lots.Labelled(labels)
            .Where(lot => named is null ? materials.Any(one => one.Id == lot.MaterialId) : lot.MaterialId == named.Id)
            .ToList();
        var material = named ?? materials.FirstOrDefault(one => lots.Any(lot => lot.MaterialId == one.Id));
        if (material is null && materials.Count > 1)
        {
            material = materials.FirstOrDefault(one => Level(one, writing) >= wanted);
        }

        material ??= materials.FirstOrDefault();
        if (material is null)
        {
            var part = form == MaterialForm.ResinA ? "part A" : "part B";
            return new ResinTaken(part, wanted, [], null, $"{part}: no such material here", null);
        }

        return lots.Count == 0 ? Oldest(material, wanted, writing) : Named(material, lots, wanted, writing);
    }

    /// <summary>The named lots that hold no part of a resin, with what they hold.</summary>
    public static string? Foreign(IReadOnlyList<string> labels, Writing writing)
    {
        var materials = writing.Session.Materials.All().ToDictionary(one => one.Id);
        foreach (var label in labels)
        {
            var of = writing.Session.Lots.Labelled([label])
                .Select(lot => materials[lot.MaterialId])
                .ToList();
            if (of.Count > 0 && of.All(one => one.Form is not (MaterialForm.ResinA or MaterialForm.HardenerB)))
            {
                return $"{label} is a lot of {of[0].Name}, not of a resin";
            }
        }

        return null;
    }

    private static ResinTaken Oldest(Material material, Volume wanted, Writing writing) =>
        writing.Session.Stock.Draw(material, new Amount.ByVolume(wanted), StockReason.Coated, writing.Act) switch
        {
            Drawn.Taken taken => Booked(material, wanted, taken.FromLots, null, writing),
            _ => Short(material, wanted, Level(material, writing), "", writing),
        };

    private static ResinTaken Named(Material material, List<Lot> lots, Volume wanted, Writing writing)
    {
        var own = lots.Where(lot => lot.MaterialId == material.Id).ToList();
        var drawn = writing.Session.Stock.DrawFrom(
            own, material, new Amount.ByVolume(wanted), StockReason.Coated, writing.Act);
        if (drawn is not Drawn.Taken { FromLots: var shares })
        {
            var here = own.Aggregate(default(Volume), (sum, lot) => sum + Volume(lot.Left));
            return Short(material, wanted, here, $" {string.Join(", ", own.Select(lot => lot.Label))}", writing);
        }

        var stop = own.FirstOrDefault(lot => lot.Stopped is not null && shares.Any(share => share.LotId == lot.Id));
        var stopped = stop is null ? null : $"{stop.Label} is stopped"
            + (stop.Stopped!.Why is { } why ? $": {why}" : "");
        return Booked(material, wanted, shares, stopped, writing);
    }

    private static ResinTaken Booked(
        Material material, Volume wanted, IReadOnlyList<LotShare> lots, string? stopped, Writing writing) =>
        new(material.Name, wanted, lots, new Amount.ByVolume(Level(material, writing)), null, stopped);

    private static ResinTaken Short(Material material, Volume wanted, Volume here, string lots, Writing writing) => new(
        material.Name,
        wanted,
        [],
        new Amount.ByVolume(Level(material, writing)),
        $"{material.Name}{lots}: {Show.Volume(here)} here, {Show.Volume(wanted)} needed",
        null);

    private static Volume Level(Material material, Writing writing) =>
        Volume(writing.Session.Materials.Levels().First(level => level.MaterialId == material.Id).Left);

    private static Volume Volume(Amount amount) => amount is Amount.ByVolume volume ? volume.Volume : default;
}
