using StudioBot.Chat.Sharing;

namespace StudioBot.Chat.Exporting;

/// <summary>What left the shelf by use, one row a line of the book; what was put back is less than nothing.</summary>
internal sealed class UsageTable : ExportTable
{
    /// <inheritdoc/>
    public override string Name => "usage";

    /// <inheritdoc/>
    public override (string One, string Many) Rows => ("use", "uses");

    /// <inheritdoc/>
    public override IReadOnlyList<string> Columns { get; } =
        ["happened_at", "member", "material", "lot", "reason", "quantity", "unit", "value", "currency", "act"];

    /// <inheritdoc/>
    public override IEnumerable<IReadOnlyList<Cell>> Of(ExportScope scope)
    {
        var names = scope.View.Members.Names();
        var materials = scope.View.Materials.All().ToDictionary(material => material.Id, material => material.Name);
        var lots = scope.View.Lots.All().ToDictionary(lot => lot.Id, lot => lot.Label);
        return scope.View.Stock.Holding()
            .Where(line => StockUse.IsUse(line.Reason) && scope.Holds(line.HappenedAt))
            .OrderBy(line => line.HappenedAt)
            .Select(line => (IReadOnlyList<Cell>)
            [
                Cell.Of(line.HappenedAt, scope.Zone),
                Cell.Of(line.MemberId is { } member ? names.GetValueOrDefault(member) : null),
                Cell.Of(materials[line.MaterialId]),
                Cell.Of(lots.GetValueOrDefault(line.LotId)),
                Cell.Of(line.Reason.ToString().ToLowerInvariant()),
                Cell.Of(line.Amount, isLess: line.Fills),
                Cell.UnitOf(line.Amount),
                scope.Tells(line.MemberId) ? Cell.Of(line.Fills ? -line.Worth : line.Worth) : Cell.Empty,
                Cell.Of(scope.Tells(line.MemberId) ? scope.Currency : null),
                Cell.Of(line.ActId),
            ]);
    }
}
