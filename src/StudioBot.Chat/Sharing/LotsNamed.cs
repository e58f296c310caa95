using StudioBot.Records.Materials;

namespace StudioBot.Chat.Sharing;

/// <summary>The lots that bear a label: the two parts of a kit share one.</summary>
internal static class LotsNamed
{
    /// <summary>All lots of these labels, each with its material.</summary>
    public static IReadOnlyList<(Lot Lot, Material Material)> Of(IReadOnlyList<string> labels, Writing writing)
    {
        var materials = writing.Session.Materials.All().ToDictionary(material => material.Id);
        return [.. writing.Session.Lots.All()
            .Where(lot => lot.Label is { } label && labels.Contains(label, StringComparer.OrdinalIgnoreCase))
            .Select(lot => (lot, materials[lot.MaterialId]))];
    }
}
