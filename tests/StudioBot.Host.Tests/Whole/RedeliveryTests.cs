using System.Globalization;
using System.Text.Json.Nodes;
using StudioBot.Host.Tests.Support;
using Xunit.Abstractions;

namespace StudioBot.Host.Tests.Whole;

/// <summary>Updates that come again and again, out of order and under other numbers, also under numbers that were another's
/// before: each event has its effect once. A failure prints the seed, and STUDIOBOT_SEED takes it back.</summary>
public sealed class RedeliveryTests(ITestOutputHelper output)
{
    private const int Rounds = 25;
    private const int MostEvents = 8;

    [Fact]
    public async Task However_an_event_comes_it_counts_once()
    {
        var seed = int.TryParse(
            Environment.GetEnvironmentVariable("STUDIOBOT_SEED"), CultureInfo.InvariantCulture, out var given)
            ? given
            : Random.Shared.Next();
        var (events, deliveries) = (0, 0);
        for (var round = 0; round < Rounds; round++)
        {
            var random = new Random(unchecked((seed * 31) + round));
            using var desk = new Desk();
            var told = Enumerable.Range(0, random.Next(2, MostEvents + 1)).Select(number => Event.Some(desk, number, random)).ToList();
            List<JsonObject> copies = [.. told.SelectMany(one =>
                Enumerable.Range(0, random.Next(2, 101)).Select(_ => Renumbered(one.Update, random)))];
            var order = copies.ToArray();
            random.Shuffle(order);
            foreach (var some in order.Chunk(random.Next(1, 60)))
            {
                desk.Store(some);
                await Now_and_then_it_settles(desk, random);
            }

            await desk.Settle();
            var how = $"seed {seed}, round {round}";
            Assert.True(
                told.Select(one => one.Record).OfType<string>().Order().SequenceEqual(desk.Recorded.Order()),
                $"{how}: {string.Join(" | ", desk.Recorded)}");
            var letters = desk.Posted();
            Assert.All(told, one => Assert.True(
                letters.Count(letter => letter.Plain.Split('\n')[0] == one.Answer) == 1, $"{how}: {one.Answer}"));
            Assert.True(letters.Count == told.Count, how);
            (events, deliveries) = (events + told.Count, deliveries + copies.Count);
        }

        output.WriteLine($"redelivered: seed {seed}, {events} events in {deliveries} copies, each counted once");
    }

    private static async Task Now_and_then_it_settles(Desk desk, Random random)
    {
        if (random.Next(4) == 0)
        {
            await desk.Settle();
            desk.Reopen();
        }
    }

    // Most under the number they had; some under a new one, high, or low as after a week of silence, where others are.
    private static JsonObject Renumbered(JsonObject update, Random random)
    {
        var copy = (JsonObject)update.DeepClone();
        copy["update_id"] = random.Next(4) switch
        {
            0 => random.Next(1, 2 * MostEvents),
            1 => random.Next(1_000_000, 2_000_000),
            _ => copy["update_id"]!.GetValue<long>(),
        };
        return copy;
    }

    /// <param name="Update">As it came first.</param>
    /// <param name="Record">What it records; none where it asks.</param>
    /// <param name="Answer">The first line of its answer, which no other has.</param>
    private sealed record Event(JsonObject Update, string? Record, string Answer)
    {
        public static Event Some(Desk desk, int number, Random random)
        {
            var (who, at) = (random.Next(2) == 0 ? Desk.Nora : Desk.Pia, number + 1);
            switch (random.Next(3))
            {
                case 0:
                    var room = $"room {15 + number}C 58%";
                    return new Event(desk.Message(at, who, 100 + number, room), room, $"Studio: {15 + number} °C, 58 %.");
                case 1:
                    var asked = $"ratio 1:1 {2 * at} ml";
                    return new Event(desk.Message(at, who, 100 + number, asked), null, $"{2 * at} ml at 1:1 by volume");
                default:
                    var line = $"ratio 1:2 {30 * at} ml";
                    return new Event(
                        StandInUpdates.Press(at, who, 50, $"press {number}", line, who), null, $"{30 * at} ml at 1:2 by volume");
            }
        }
    }
}
