using System.Diagnostics;
using System.Text.Json.Nodes;
using StudioBot.Host.Sending;
using StudioBot.Host.Tests.Support;
using Xunit.Abstractions;

namespace StudioBot.Host.Tests.Turns;

/// <summary>One member writes a hundred messages a second for a minute; five others go on as if nothing was.</summary>
public sealed class FloodTests(ITestOutputHelper output) : IDisposable
{
    private const long Flooder = Desk.Pia;
    private const int Seconds = 60;
    private const int Steps = 10;   // in a second

    private readonly Desk desk = new();
    private readonly Dictionary<long, DateTimeOffset> asked = [];
    private int updates;

    public void Dispose() => desk.Dispose();

    [Theory]
    [InlineData(Flooder)]                       // in private
    [InlineData(StandInUpdates.GroupChat)]      // in the studio's group
    public async Task Nobody_else_waits_and_who_floods_is_told_once(long where)
    {
        var others = Enumerable.Range(101, 5).Select(account => (long)account).ToList();
        desk.File.Write(session =>
        {
            foreach (var account in others)
            {
                var member = session.Members.Add($"M{account}", Records.Members.Role.Member, desk.Now);
                session.Members.AddAccount(account, member.Id, desk.Now);
            }
        });
        await Play(where, others);

        var took = asked.Select(one => (desk.Wire.All.First(sent => sent.Chat == one.Key / 1000
            && sent.Letter.Plain.Contains($"{one.Key % 1000 + 100} ml", StringComparison.Ordinal)).At - one.Value).TotalSeconds)
            .Order().ToList();
        output.WriteLine($"p95 of others {took[(int)(took.Count * 0.95)]:0.000} s, longest {took[^1]:0.000} s of played time");
        Assert.Equal(others.Count * Seconds / 5, took.Count);
        Assert.True(took[(int)(took.Count * 0.95)] <= 2);

        // Twenty, and one in three seconds: a minute's worth. What is said within that is booked, every one of them.
        Assert.InRange(Booked(), 20 + Seconds / 3 - 1, 20 + Seconds / 3 + 1);
        Assert.Single(desk.Wire.All, sent => sent.Letter.Plain.StartsWith("Slower, please", StringComparison.Ordinal));
        Assert.Single(desk.Refused, row => row.EndsWith("too fast", StringComparison.Ordinal));
        Assert.Empty(desk.File.Write(session => session.Inbox.AllParked()));
    }

    private async Task Play(long where, List<long> others)
    {
        using var stop = new CancellationTokenSource();
        var inbox = new Bell(desk.Clock);
        var sender = desk.Sender(desk.Wire);
        var answering = desk.Loop(inbox, sender).Run(stop.Token);
        var sending = sender.Run(stop.Token);
        List<TimeSpan> took = [];
        for (var step = 0; step < Seconds * Steps; step++)
        {
            Come(where, others, step);
            var began = Stopwatch.GetTimestamp();
            inbox.Ring();
            await Patience.Until(() => desk.File.Write(session => session.Inbox.Next(1)).Count == 0);
            took.Add(Stopwatch.GetElapsedTime(began));
            desk.Clock.Advance(TimeSpan.FromSeconds(1.0 / Steps));
        }

        // What comes in a tenth of a second is settled in one, as a rule: other tests have the machine at times.
        var median = took.Order().ElementAt(took.Count / 2);
        output.WriteLine($"{updates} messages settled in {took.Sum(one => one.TotalSeconds):0.0} s, a step's median {median.TotalMilliseconds:0} ms");
        Assert.True(median < TimeSpan.FromSeconds(1.0 / Steps), "It would not keep up.");
        await Patience.Until(desk.Clock, TimeSpan.FromMilliseconds(100), () => asked.Keys.All(one =>
            desk.Wire.All.Any(sent => sent.Chat == one / 1000)) && desk.File.Write(session => session.Post.NextTryAt()) is null);
        await Patience.End(answering, stop);
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => sending);
    }

    // Ten of the flood, and each other a question every five seconds.
    private void Come(long where, List<long> others, int step)
    {
        List<JsonObject> came = [];
        for (var one = 0; one < 100 / Steps; one++)
        {
            came.Add(desk.Message(++updates, where, updates, $"/room {10 + updates / 100 % 20}C {30 + updates % 50}%", Flooder));
        }

        foreach (var other in others.Where(other => (step + other * 7) % (5 * Steps) == 0))
        {
            var number = step / Steps;
            asked[other * 1000 + number] = desk.Now;
            came.Add(desk.Message(++updates, other, updates, $"ratio 1:1 {number + 100} ml"));
        }

        desk.Store([.. came]);
    }

    private int Booked() => desk.Wire.All.Count(sent =>
        sent.Letter.Plain.StartsWith("Studio: ", StringComparison.Ordinal));
}
