using StudioBot.Craft.Costs;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Exporting;

/// <summary>What was poured and what became of it, one row a piece.</summary>
internal sealed class PiecesTable : ExportTable
{
    /// <inheritdoc/>
    public override string Name => "pieces";

    /// <inheritdoc/>
    public override (string One, string Many) Rows => ("piece", "pieces");

    /// <inheritdoc/>
    public override IReadOnlyList<string> Columns { get; } =
    [
        "number", "poured_at", "maker", "shape", "width_cm", "height_cm", "depth_cm", "technique", "colours",
        "recipe", "batch", "shelf", "stage", "stage_since", "stage_words", "sold_for", "currency",
    ];

    /// <inheritdoc/>
    public override IEnumerable<IReadOnlyList<Cell>> Of(ExportScope scope)
    {
        var ids = scope.View.Members.Names().ToLookup(member => member.Value, member => member.Key);
        var pieces = scope.View.Pieces.All().Where(piece => scope.Holds(piece.PouredAt)).ToList();
        var ends = scope.View.Trails.Ends(pieces.Select(piece => piece.Number)).ToDictionary(end => end.Number);
        var sold = scope.View.Pieces.Lines()
            .Where(line => line.What is PieceEvent.Sold)
            .ToLookup(line => line.Number, line => ((PieceEvent.Sold)line.What).Price);
        return pieces.Select(piece =>
        {
            var (shape, width, height) = Sizes(piece.Surface);
            var end = ends[piece.Number];
            var isTold = end.Stage == Stage.Sold && ids[piece.Maker].Any(id => scope.Tells(id));
            return (IReadOnlyList<Cell>)
            [
                Cell.Of(piece.Number),
                Cell.Of(piece.PouredAt, scope.Zone),
                Cell.Of(piece.Maker),
                Cell.Of(shape),
                Cell.Of(width),
                Cell.Of(height),
                Cell.Of(piece.Depth),
                Cell.Of(piece.Technique),
                Cell.Of(piece.Colours),
                Cell.Of(piece.Recipe),
                Cell.Of(piece.Batch),
                Cell.Of(piece.Shelf),
                Cell.Of(end.Stage.ToString().ToLowerInvariant()),
                Cell.Of(end.Since, scope.Zone),
                Cell.Of(end.Words),
                isTold ? Cell.Of(sold[piece.Number].Select(price => (Money?)price).LastOrDefault()) : Cell.Empty,
                Cell.Of(isTold ? scope.Currency : null),
            ];
        });
    }

    private static (string Shape, Length Width, Length? Height) Sizes(Surface surface) => surface switch
    {
        Surface.Panel panel => ("panel", panel.Width, panel.Height),
        Surface.Oval oval => ("oval", oval.Width, oval.Height),
        Surface.Disc disc => ("disc", disc.Diameter, null),
        Surface.Hexagon hexagon => ("hexagon", hexagon.AcrossFlats, null),
        _ => throw new ArgumentOutOfRangeException(nameof(surface), surface, "A surface without a shape."),
    };
}
