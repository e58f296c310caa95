using StudioBot.Chat.Asking;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Exporting;

/// <summary>What stands on the shelf now, one row a lot.</summary>
internal sealed class StockTable : ExportTable
{
    /// <inheritdoc/>
    public override string Name => "stock";

    /// <inheritdoc/>
    public override (string One, string Many) Rows => ("lot", "lots");

    /// <inheritdoc/>
    public override IReadOnlyList<string> Columns { get; } =
    [
        "material", "form", "lot", "bought_at", "bought", "left", "unit", "price", "value", "currency", "opened_at",
        "stopped_at", "stopped_why",
    ];

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
                Cell.Of(Form(materials[lot.MaterialId].Form)),
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

    private static string Form(MaterialForm form) => form switch
    {
        MaterialForm.Liquid => "liquid",
        MaterialForm.Powder => "powder",
        MaterialForm.Counted => "counted",
        MaterialForm.Mixture => "mixture",
        MaterialForm.ResinA => "resin A",
        MaterialForm.HardenerB => "hardener B",
        _ => throw new ArgumentOutOfRangeException(nameof(form), form, "A form without a word."),
    };
}
