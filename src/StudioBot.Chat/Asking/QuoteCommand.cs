using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Asking;

/// <summary><c>quote 40cm round bloom resin 2 coats</c>: what a piece costs to make, and a price.</summary>
internal sealed class QuoteCommand() : Unopened(records: false)
{
    private static readonly SurfaceSlot Size = new() { IsRequired = true };
    private static readonly CountSlot Coats = new("coats", "a number of coats", ["coats", "coat"], 20);
    private static readonly NameSlot Way = new(NameKind.Technique, "technique", "a technique", "bloom");
    private static readonly ColoursSlot Colours = new();
    private static readonly ChoiceSlot Resin = new("", "resin", new Dictionary<string, string> { ["resin"] = "resin", ["epoxy"] = "resin" });

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "quote", Room.Asking, "What a piece costs to make, and a price.",
        [Coats, Size, Way, Resin, Colours],
        ["quote 40cm round bloom resin 2 coats", "what should I charge for a 30cm panel?"])
    {
        Also = ["price"],
        Cues =
        [
            new("charge/price/cost {size}"),
            new("ask/sell/take for {size}"),
            new("how much ask/charge/sell/cost {size}"),
        ],
    };

    /// <inheritdoc/>
    internal override IEnumerable<Meaning> AlsoUnderstood(Phrase said) =>
        said.Has(Resin) || said.Has(Coats) ? [new("resin", "yes")] : [];
}
