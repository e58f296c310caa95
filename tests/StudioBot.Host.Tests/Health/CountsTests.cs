using System.Diagnostics.Metrics;
using StudioBot.Host.Sending;
using StudioBot.Host.Tests.Support;

namespace StudioBot.Host.Tests.Health;

public sealed class CountsTests : IDisposable
{
    private readonly Desk desk = new();
    private readonly MeterListener listener = new();
    private readonly List<(string Instrument, double Value, string How)> heard = [];

    public CountsTests()
    {
        listener.InstrumentPublished = (instrument, all) =>
        {
            if (ReferenceEquals(instrument.Meter, desk.Counts.Meter))
            {
                all.EnableMeasurementEvents(instrument);
            }
        };
        listener.SetMeasurementEventCallback<double>((instrument, value, tags, _) => heard.Add((instrument.Name, value, $"{tags[0].Value}")));
        listener.SetMeasurementEventCallback<long>((instrument, value, _, _) => heard.Add((instrument.Name, value, "")));
        listener.Start();
    }

    public void Dispose()
    {
        listener.Dispose();
        desk.Dispose();
    }

    [Fact]
    public async Task Every_message_is_counted_with_how_it_went()
    {
        desk.Break(false, true);
        await desk.Settle(desk.Message(1, Desk.Nora, 1, "ratio 3:1 250 ml"), desk.Message(2, Desk.Nora, 2, "room 20C 58%"));
        Assert.Equal(["settled", "broke", "settled"], heard.Select(one => one.How));
        Assert.All(heard, one => Assert.Equal("studiobot.settled", one.Instrument));
    }

    [Fact]
    public async Task Every_try_to_send_is_counted_with_what_came_of_it()
    {
        var wire = new CountedWire(desk.Wire, desk.Counts, desk.Clock);
        await wire.Send(Desk.Nora, new Letter("a", "a", []), CancellationToken.None);
        Assert.Equal(("studiobot.carried", "sent"), heard.Select(one => (one.Instrument, one.How)).Single());
    }

    [Fact]
    public void What_is_stored_and_what_is_said_by_itself_are_counted()
    {
        desk.Counts.Stored(3);
        desk.Counts.Reminded(2);
        Assert.Equal([("studiobot.updates", 3.0, ""), ("studiobot.reminders", 2.0, "")], heard);
    }
}
