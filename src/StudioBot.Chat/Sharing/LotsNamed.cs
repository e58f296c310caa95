using StudioBot.Chat.Asking;
using StudioBot.Chat.Replies;
using StudioBot.Records.Materials;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Sharing;

/// <summary>The lots that bear a label: the two parts of a kit share one.</summary>
internal static class LotsNamed
{
    private const int MostShown = 3;

    /// <summary>All lots of these labels, each with its material.</summary>
    public static IReadOnlyList<(Lot Lot, Material Material)> Of(IReadOnlyList<string> labels, Writing writing)
    {
        var materials = writing.Session.Materials.All().ToDictionary(material => material.Id);
        return [.. writing.Session.Lots.Labelled(labels).Select(lot => (lot, materials[lot.MaterialId]))];
    }

    /// <summary>Why a label can't be meant: no lot of these materials bears it; none where each of them is one.
    /// </summary>
    /// <param name="labels">The lots that were named.</param>
    /// <param name="needs">What they are to hold.</param>
    /// <param name="line">The message without its lots, as one that works begins.</param>
    /// <param name="writing">Where it is written.</param>
    public static Reply? Against(
        IReadOnlyList<string> labels, IReadOnlyList<Need> needs, string line, Writing writing)
    {
        var named = Of(labels, writing);
        var odd = labels.FirstOrDefault(label => !named.Any(one =>
            label.Equals(one.Lot.Label, StringComparison.OrdinalIgnoreCase) && Holds(one.Lot)));
        if (odd is null)
        {
            return null;
        }

        List<string> here = [.. needs.SelectMany(need => writing.Session.Lots.Of(need.Material.Id))
            .Where(lot => lot.Label is not null && Need.UnitsOf(lot.Left) > 0)
            .Select(lot => lot.Label!)
            .Distinct(StringComparer.OrdinalIgnoreCase)];
        var of = Sentences.And([.. needs.Take(MostShown).Select(need => need.Material.Name)]);
        return OwnMeasure.Trouble(
            $"“{odd}” is no lot of {of}",
            here.Count == 0
                ? "None of it has a label: leave the lot out."
                : $"Here: {string.Join(", ", here.Take(MostShown))}"
                    + (here.Count > MostShown ? $" and {here.Count - MostShown} more." : "."),
            here.Count == 0 ? line : $"{line} lot {here[0]}",
            writing);

        bool Holds(Lot lot) => needs.Any(need => need.Material.Id == lot.MaterialId);
    }

    /// <summary>That lots which were drawn from are stopped, and why; none where none is.</summary>
    public static string? Stopped(IEnumerable<LotShare> shares, Writing writing)
    {
        List<string> stopped = [.. writing.Session.Lots.Of(shares.Select(share => share.LotId))
            .Where(lot => lot.Stopped is not null)
            .Select(lot => $"{lot.Label} is stopped" + (lot.Stopped!.Why is { } why ? $": {why}" : ""))];
        return stopped.Count == 0 ? null : $"Minded: {string.Join("; ", stopped)}.";
    }
}
