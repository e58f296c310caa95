using System.Globalization;
using StudioBot.Chat.Coats;
using StudioBot.Chat.Learning;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Units;

namespace StudioBot.Chat.Recording;

/// <summary><c>batch 14 gelled 14:20</c>: a batch of resin that has gelled in its cup.</summary>
internal sealed class BatchResinGelled : Act
{
    private static readonly BatchSlot Batch = new() { TakesBare = true, IsRequired = true };
    private static readonly ChoiceSlot Gelled = new("", "gelled", ["gelled", "gel"]) { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "batch", Room.Recording, "When a batch of resin gelled.",
        [Batch, Gelled, RecordSlots.Seen, FlowTold.Warmth],
        ["batch 13 gelled", "batch 13 gelled 14:20", "batch 13 gelled 21C"])
    {
        More = "How long it flows is told shorter by it, never longer than the sheet; slips and cups fuller than the "
            + "sheet's sample are left out and named.",
    };

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said) => said.Has(FlowTold.Warmth) && said.Of(FlowTold.Warmth).Air is null
        ? new Misread("", "how warm it was is missing", $"batch {said.Of(Batch)} gelled 21C")
        : null;

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var number = said.Of(Batch);
        if (SeenThen.Against(said, writing, $"batch {number} gelled") is { } trouble)
        {
            return trouble;
        }

        var batch = writing.Session.Batches.Find(number)!;
        if (batch.MadeAt >= writing.HappenedAt)
        {
            return TalkedOf.Trouble(
                $"Batch {number} was mixed only {Show.Moment(batch.MadeAt, writing.Turn)}. Nothing recorded.",
                $"batch {number} gelled");
        }

        if (BatchResin.Of(batch, writing.Studio) is not { } resin)
        {
            return BatchMaking.Trouble(
                $"Batch {number} holds no resin on record", "Only A and B mixed together gel.");
        }

        Temperature? warmth = said.Has(FlowTold.Warmth)
            ? said.Of(FlowTold.Warmth).Air
            : RoomNow.Of(writing.Session.Rooms, writing.HappenedAt);
        var isFirst = writing.Session.Batches.GelsOf(number)
            .All(gel => gel.Warmth is null || gel.At > writing.HappenedAt);
        var after = writing.HappenedAt - batch.MadeAt;
        writing.Session.Batches.Gelled(number, after, warmth, writing.Act);
        return new Reply(
            [
                new Block.Headline(
                    $"Batch {number}: gelled {Show.Time(after)} after it was mixed{SeenThen.Behind(writing)}."),
                .. Told(number, resin, isFirst, warmth, writing),
                Cautions.About(writing.Studio, SafetySubject.CupHeat),
            ],
            []);
    }

    private static IEnumerable<Block> Told(
        int number, BatchResin resin, bool isFirst, Temperature? warmth, Writing writing) =>
        (resin.Against, isFirst, warmth) switch
        {
            ({ } why, _, _) => [new Block.Line($"Kept, and left out of what is learnt: {why}.")],
            (_, _, null) =>
            [
                new Block.Line("Nobody read how warm it was, so nothing is learnt. If you know it:"),
                new Block.Sample(string.Create(
                    CultureInfo.InvariantCulture,
                    $"batch {number} gelled {WallTime.Of(writing.HappenedAt, writing.Studio):HH:mm} 21C")),
            ],
            (_, false, _) => [new Block.Line("Kept; what counts is when it was first seen.")],
            _ => StudioGels.OfBatch(writing.Session.Batches.GelsOf(number)[^1], resin.System) is { } gel
                ? GelTold.Of(gel, writing.Studio)
                : [new Block.Line("Below 10 °C its sheet says nothing: nothing is learnt from it.")],
        };
}
