using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Asking;

/// <summary><c>resin 30cm round 3mm 2:1</c>: resin for a surface or pieces.</summary>
internal sealed class ResinCommand() : Unopened(records: false)
{
    private static readonly SurfaceSlot Size = new();
    private static readonly FilmSlot Film = new(Size);
    private static readonly RatioSlot Ratio = new();
    private static readonly CountSlot Coats = new("coats", "a number of coats", ["coats", "coat", "layers", "layer"], 20);
    private static readonly AirSlot Air = new();
    private static readonly PiecesSlot Pieces = new() { Most = 20, Unless = Size };
    private static readonly AmountSlot Total = new("an amount of resin", "300 g");
    private static readonly ChoiceSlot Detail = new("", "a detail", new Dictionary<string, string> { ["grounds"] = "grounds", ["cups"] = "cups" });

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "resin", Room.Asking, "Resin for a surface or pieces.",
        [Coats, Film, Size, Ratio, Air, Total, Pieces, Detail],
        ["resin 30cm round 3mm 2:1", "resin 17 18 2mm", "resin 300 g 100:45 by weight"])
    {
        Cues =
        [
            new("how much resin/epoxy {size}"),
            new("resin/epoxy need/needs/needed {size}"),
        ],
    };
}
