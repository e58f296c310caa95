using StudioBot.Chat.Asking;
using StudioBot.Chat.Learning;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Flow;
using StudioBot.Craft.Units;

namespace StudioBot.Chat.Recording;

/// <summary>How a batch flowed, as a record tells it: a cup's seconds or a trace, and how warm it was.</summary>
internal static class FlowTold
{
    /// <summary>ford4 22 s.</summary>
    public static readonly CupSlot Cup = new();

    /// <summary>trace 1.5 s, 1.5 s trace, 1.5 s.</summary>
    public static readonly TraceSlot Trace = new();

    /// <summary>21C.</summary>
    public static readonly AirSlot Warmth = new();

    /// <summary>What is wrong with a reading that was told; none where nothing is, or none was.</summary>
    /// <param name="said">What was said.</param>
    /// <param name="before">What stands before the reading in a line that works.</param>
    public static Misread? Against(Phrase said, string before) => said switch
    {
        _ when said.Has(Cup) && said.Has(Trace) => new Misread(
            "", "a cup's seconds and a trace are two readings: tell one", $"{before} {Cup.Example}"),
        _ when said.Has(Cup) && said.Of(Cup).Time is null => new Misread(
            "", "the cup's seconds are missing", $"{before} {Example(said.Of(Cup).Cup)}"),
        _ when said.Has(Cup) => FlowCheck.OutOfRange(
            CupCurves.Find(said.Of(Cup).Cup)!, said.Of(Cup).Time!.Value, before),
        _ when said.Has(Warmth) && !said.Has(Trace) => new Misread(
            "", "a warmth without a reading of how it flows", $"{before} {Cup.Example} 21C"),
        _ when said.Has(Warmth) && said.Of(Warmth).Air is null => new Misread(
            "", "how warm the mixture is, is missing", $"{before} {Cup.Example} 21C"),
        _ => null,
    };

    /// <summary>The reading; none where none was told. Unless it was said how warm it was, it is as warm as the first
    /// room that was read within half a day.</summary>
    public static FlowReading? Of(Phrase said, Writing writing)
    {
        Temperature? at = said.Has(Warmth)
            ? said.Of(Warmth).Air
            : RoomNow.Of(writing.Session.Rooms, writing.HappenedAt);
        return said.Has(Cup)
            ? new FlowReading.OfCup(CupCurves.Find(said.Of(Cup).Cup)!, said.Of(Cup).Time!.Value, at)
            : said.Has(Trace)
                ? new FlowReading.OfTrace(new Trace(TimeSpan.FromSeconds(said.Of(Trace))), at)
                : null;
    }

    // Seconds that this cup can tell.
    private static string Example(string cup) => CupCurves.Find(cup) is { Name: not "ford4" } other
        ? $"{other.Name} {Show.Number(Math.Round(other.Times.From.TotalSeconds), 0)} s"
        : Cup.Example;

    /// <summary>Ford 4 22 s at 21 °C; trace 1.5 s.</summary>
    public static string Words(FlowReading reading) => Seconds(reading)
        + (reading.At is { } at ? $" at {Show.Degrees(at)}" : "");

    /// <summary>Ford 4 22 s; trace 1.5 s.</summary>
    public static string Seconds(FlowReading reading) =>
        $"{(reading is FlowReading.OfCup cup ? cup.Cup.Title : "trace")} "
        + $"{Show.Number(reading.Seconds.TotalSeconds, 2)} s";

    /// <summary>As it is typed: ford4 22 s; trace 1.5 s.</summary>
    public static string Typed(FlowReading reading) =>
        $"{(reading is FlowReading.OfCup cup ? cup.Cup.Name : "trace")} "
        + $"{Show.Number(reading.Seconds.TotalSeconds, 2)} s";
}
