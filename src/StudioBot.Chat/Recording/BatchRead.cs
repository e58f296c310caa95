using StudioBot.Chat.Asking;
using StudioBot.Chat.Learning;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft;
using StudioBot.Craft.Flow;
using StudioBot.Craft.Units;

namespace StudioBot.Chat.Recording;

/// <summary><c>batch 14 ford4 22 s 21C</c>: how a batch flows.</summary>
internal sealed class BatchRead : Act
{
    private const string Works = "batch 14 ford4 22 s";

    private static readonly BatchSlot Batch = new() { TakesBare = true, IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "batch", Room.Recording, "How a batch flows.",
        [FlowTold.Cup, FlowTold.Trace, FlowTold.Warmth, Batch, RecordSlots.Day],
        ["batch 13 ford4 22 s 21C", "batch 13 trace 1.5 s"])
    {
        More = "With how warm it was (unless you say: as the room); from readings before and after an addition "
            + "your thinner's own strength is learnt.",
    };

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said) =>
        !said.Has(FlowTold.Cup) && !said.Has(FlowTold.Trace) && !said.Has(FlowTold.Warmth)
            ? new Misread("", "a reading of how it flows is missing", Works)
            : FlowTold.Against(said, $"batch {said.Of(Batch)}");

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var number = said.Of(Batch);
        if (BatchLot.Of(number, writing).Lot is { } lot && Need.UnitsOf(lot.Left) == 0)
        {
            return BatchMaking.Trouble($"Nothing is left of batch {number}", "What is gone can't be read any more.");
        }

        var reading = FlowTold.Of(said, writing)!;
        writing.Session.Batches.Flowed(number, reading, writing.Act);
        List<Block> blocks = [new Block.Headline($"Batch {number}: {FlowTold.Words(reading)}{Viscosity(reading)}.")];
        blocks.Add(new Block.Line(Warmth(reading, said)));
        var own = StudioFlow.Of(writing.Studio);
        blocks.Add(new Block.Line(own.IsLearntFrom(number, writing.Act.Id) switch
        {
            null => "What is in it is not on record, so nothing is learnt from it.",
            false => "It lies far from your other readings: a slip? Kept, and left out of what is learnt.",
            true when own.IsMended(number, writing.Act.Id) =>
                "Ten times off your other readings: a digit slipped? Kept, and counted as if it had not.",
            true => own.SayOf(number, writing.Turn)
                ?? "Read it again after something was added: then it says how that thins.",
        }));
        return new Reply(blocks, []);
    }

    private static string Viscosity(FlowReading reading) =>
        (reading as FlowReading.OfCup)?.Viscosity switch
        {
            Finding<KinematicViscosity>.Found found => Figure(found.Value),
            Finding<KinematicViscosity>.Cautioned cautioned => Figure(cautioned.Value),
            _ => "",
        };

    private static string Figure(KinematicViscosity viscosity) =>
        $", {Show.Number(viscosity.SquareMillimetresPerSecond, 0)} mm²/s";

    private static string Warmth(FlowReading reading, Phrase said) => reading.At switch
    {
        null => "Nobody read how warm it was: say it with it, as 21C.",
        _ when said.Has(FlowTold.Warmth) => "Taken stirred, through, at that warmth.",
        _ => "Its warmth is taken from the room.",
    };
}
