using StudioBot.Records.Materials;

namespace StudioBot.Records.Recipes;

/// <summary>A part as it stands in the file, under the recipe or the piece that it belongs to.</summary>
internal sealed record PartRow(long Whole, long MaterialId, string Material, long? Microlitres, long? Milligrams)
{
    /// <summary>The columns of parts in their order.</summary>
    public static IEnumerable<object> Columns(long whole, IReadOnlyList<Part> parts) =>
        parts.Select((part, index) =>
        {
            var (microlitres, milligrams, _) = AmountColumns.Of(part.Amount);
            return (object)new { whole, position = index + 1, material = part.MaterialId, microlitres, milligrams };
        });

    public Part From() => new(MaterialId, Material, new AmountColumns(Microlitres, Milligrams, null).Known());
}
