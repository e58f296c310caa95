using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Recording;

/// <summary><c>coat 17 180 ml 2:1 lot H-12</c>: a coat of resin.</summary>
internal sealed class CoatCommand() : Unopened(records: true)
{
    private static readonly CupPartsSlot Parts = new() { Key = "" };
    private static readonly RatioSlot Ratio = new();
    private static readonly LotSlot Lots = new();
    private static readonly AmountSlot Amount = new("an amount", "180 ml");
    private static readonly AirSlot Air = new();
    private static readonly PiecesSlot Pieces = new() { IsRequired = true, Most = 30 };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "coat", Room.Recording, "A coat of resin.",
        [Pieces, Parts, Ratio, Lots, Amount, Air, RecordSlots.Day, RecordSlots.For],
        ["coat 17 180 ml 2:1 lot H-12", "coat 17 120 A 60 B lots R-3 H-12"])
    {
        Also = ["coated", "resined"],
    };

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said) => said switch
    {
        _ when said.Has(Parts) && said.Of(Parts).Count < 2 =>
            new Misread("", "the other part of the resin is missing", Sheet.Examples[1]),
        _ when !said.Has(Amount) && !said.Has(Parts) => new Misread("", "the amount is missing", Sheet.Examples[0]),
        _ => null,
    };

    /// <inheritdoc/>
    internal override IEnumerable<Meaning> AlsoUnderstood(Phrase said) => MixedResin.Of(
        said.Or(Parts, []), said.Has(Amount) ? said.Of(Amount) : null, said.Has(Ratio) ? said.Of(Ratio) : null);
}
