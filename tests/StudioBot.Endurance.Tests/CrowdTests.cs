using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using Microsoft.Extensions.Logging.Abstractions;
using StudioBot.Chat.Pings;
using StudioBot.Host.Telegram;
using StudioBot.Host.Tests.Support;
using StudioBot.Host.Turns;
using StudioBot.Records;
using StudioBot.Records.Backups;
using StudioBot.Records.Members;
using StudioBot.Records.Post;
using Xunit.Abstractions;

namespace StudioBot.Endurance.Tests;

/// <summary>Eight members write five messages a second each while backups are made, the shelf and what is due are looked
/// over and the log is shortened: nobody ever hears that the books are taken.</summary>
[Collection(Alone.Name)]
public sealed class CrowdTests(ITestOutputHelper output) : IDisposable
{
    private const int Writers = 8;
    private const int WarmUp = 5;
    private const long Nora = 7;
    private const long FirstOfThem = 101;

    // Ten times as often as the service looks for what is due, and far more often than it does anything else of this.
    private static readonly TimeSpan BetweenTicks = TimeSpan.FromMilliseconds(200);

    // Five messages a second of each: a busy workshop's minute in a second.
    private static readonly TimeSpan BetweenWords = TimeSpan.FromMilliseconds(200);

    private static readonly TimeSpan AsLong = TimeSpan.FromSeconds(10);
    private static readonly TimeSpan LongestWait = TimeSpan.FromMilliseconds(250);
    private static readonly DateTimeOffset Start = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    private readonly TempFolder folder = new();
    private readonly ConcurrentBag<(int Turn, TimeSpan Wait)> waits = [];
    private int updates;

    public void Dispose() => folder.Dispose();

    [Fact]
    public async Task Eight_write_at_once_beside_backups_and_ticks_and_none_is_turned_away()
    {
        using var file = Founded();
        var backups = BackupFolder.Of(folder.StudioPath);
        var began = Stopwatch.GetTimestamp();
        var made = 0;
        IEnumerable<Action<int>> beside =
        [
            _ => made += backups.Make(BackupKind.Asked, Start.AddSeconds(made)) is null ? 0 : 1,
            turn => file.Write(session =>
                StockWatch.Look(session, new Chat.Studio(session, Studios.Practice, isSample: false), At(turn))),
            turn => file.Write(session => session.Reminders.Due(At(turn), 100).Count),
            _ => file.Read(view => view.Materials.Levels().Count),
            _ => file.ShortenLog(),
        ];

        await Task.WhenAll([
            .. Enumerable.Range(0, Writers).Select(writer => Beside(began, Writing(file, FirstOfThem + writer), BetweenWords)),
            .. beside.Select(work => Beside(began, work, BetweenTicks)),
        ]);

        var all = waits.Where(one => one.Turn >= WarmUp).Select(one => one.Wait).Order().ToList();
        var p99 = all[(int)(all.Count * 0.99)];
        output.Print(
            $"""
            crowd: {waits.Count} messages of {Writers}, {made} backups beside them, 0 turned away;
            crowd: p50 {all[all.Count / 2].TotalMilliseconds:0} ms, p99 {p99.TotalMilliseconds:0} ms from each one's sixth on
            """);
        using var raw = new RawStudio(folder.StudioPath);
        Assert.Equal(waits.Count, raw.One<long>("select count(*) from act where kind = 'used'"));
        Assert.True(made > 1);
        Assert.True(p99 <= LongestWait);
    }

    private StudioFile Founded()
    {
        var file = StudioFile.Open(folder.StudioPath);
        Studios.Found(file, Start.AddDays(-1), (Nora, "Nora"));
        file.Write(session =>
        {
            for (var writer = 0; writer < Writers; writer++)
            {
                session.Members.AddAccount(
                    FirstOfThem + writer, session.Members.Add($"M{writer}", Role.Member, Start).Id, Start);
            }
        });
        Say(file, new Clerk(file, 1, Studios.Answering(), NullLogger<Clerk>.Instance), Nora, "bought 100 x 1 L white 500.00", Start);
        return file;
    }

    // Each types every four seconds by their own clock, so that none of them floods.
    private Action<int> Writing(StudioFile file, long who)
    {
        var clerk = new Clerk(file, 1, Studios.Answering(), NullLogger<Clerk>.Instance);
        return turn =>
        {
            var began = Stopwatch.GetTimestamp();
            Say(file, clerk, who, string.Create(CultureInfo.InvariantCulture, $"used {1 + (turn / 100.0):0.00} ml white"), At(turn));
            waits.Add((turn, Stopwatch.GetElapsedTime(began)));
        };
    }

    private void Say(StudioFile file, Clerk clerk, long who, string words, DateTimeOffset at)
    {
        var id = Interlocked.Increment(ref updates);
        var received = ReceivedUpdate.Of(
            JsonDocument.Parse(StandInUpdates.Message(id, who, id, words, at: at).ToJsonString()).RootElement)!;
        var row = file.Write(session =>
        {
            session.Inbox.Store(
                new Incoming(received.UpdateId, received.Chat, received.Kind, received.Raw) { MessageId = received.Message }, at);
            return session.Inbox.Next().Single(waiting => waiting.ChatId == who);
        });
        clerk.Settle(row, at);
    }

    private static DateTimeOffset At(int turn) => Start.AddSeconds(60 + (4 * turn));

    private static Task Beside(long began, Action<int> work, TimeSpan pause) => Task.Factory.StartNew(
        () =>
        {
            for (var turn = 0; Stopwatch.GetElapsedTime(began) < AsLong; turn++)
            {
                work(turn);
                Thread.Sleep(pause);
            }
        },
        TaskCreationOptions.LongRunning);
}
