using StudioBot.Chat.Asking;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Exporting;

/// <summary>What stands on the shelf now, one row a lot.</summary>
internal sealed class StockTable : ExportTable
{
    /// <summary>The names of its columns, also where such a table is read.</summary>
    public static IReadOnlyList<string> ColumnNames { get; } =
    [
        "material", "form", "lot", "bought_at", "bought", "left", "unit", "price", "value", "currency", "opened_at",
        "stopped_at", "stopped_why",
    ];

    /// <summary>The word of each form, as it stands in the column.</summary>
    public static IReadOnlyDictionary<MaterialForm, string> Forms { get; } = new Dictionary<MaterialForm, string>
    {
        [MaterialForm.Liquid] = "liquid",
        [MaterialForm.Powder] = "powder",
        [MaterialForm.Counted] = "counted",
        [MaterialForm.Mixture] = "mixture",
        [MaterialForm.ResinA] = "resin A",
        [MaterialForm.HardenerB] = "hardener B",
    };

    /// <inheritdoc/>
    public override string Name => "stock";

    /// <inheritdoc/>
    public override (string One, string Many) Rows => ("lot", "lots");

    /// <inheritdoc/>
    public override IReadOnlyList<string> Columns => ColumnNames;

    /// <inheritdoc/>
    public override IEnumerable<IReadOnlyList<Cell>> Of(ExportScope scope)
    {
        var materials = scope.View.Materials.All().ToDictionary(material => material.Id);
        return scope.View.Lots.All()
            .Where(lot => Need.UnitsOf(lot.Left) > 0 && scope.Holds(lot.BoughtAt))
            .OrderBy(lot => materials[lot.MaterialId].Name, StringComparer.OrdinalIgnoreCase)
            .Select(lot => (IReadOnlyList<Cell>)
            [
                Cell.Of(materials[lot.MaterialId].Name),
                Cell.Of(Forms[materials[lot.MaterialId].Form]),
                Cell.Of(lot.Label),
                Cell.Of(lot.BoughtAt, scope.Zone),
                Cell.Of(lot.Bought),
                Cell.Of(lot.Left),
                Cell.UnitOf(lot.Left),
                Cell.Of(lot.Price),
                Cell.Of(lot.Worth),
                Cell.Of(scope.Currency),
                Cell.Of(lot.OpenedAt, scope.Zone),
                Cell.Of(lot.Stopped?.At, scope.Zone),
                Cell.Of(lot.Stopped?.Why),
            ]);
    }
}
