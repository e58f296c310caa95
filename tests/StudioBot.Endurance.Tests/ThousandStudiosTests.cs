using System.Collections.Concurrent;
using System.Diagnostics;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using StudioBot.Host.Rehearsal;
using StudioBot.Host.Tests.Support;
using StudioBot.Records;
using Xunit.Abstractions;

namespace StudioBot.Endurance.Tests;

/// <summary>A thousand studios in one process, each in its own file, through one day of pouring, asking and being reminded. The files lie in
/// memory where the machine has a place for that: what a disk takes for a flush is not what is looked at here. Each has a
/// mark that stands in what is written there and nowhere else.</summary>
[Collection(Alone.Name)]
public sealed partial class ThousandStudiosTests(ITestOutputHelper output) : IDisposable
{
    private static readonly int Studio = Printed.Setting("STUDIOBOT_STUDIOS", 1000);
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(120);
    private static readonly DateTimeOffset Morning = new(2026, 11, 25, 7, 0, 0, TimeSpan.Zero);

    // The same person everywhere: the chat service knows one account, and many bots.
    private static readonly Player Pia = new("pia", 101);

    private readonly TempFolder folder = TempFolder.InMemory();
    private readonly ConcurrentDictionary<int, ConcurrentQueue<HeardMessage>> heard = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_thousand_studios_live_through_a_day_and_nothing_crosses_between_them()
    {
        var first = Path.Combine(folder.Path, "founded.db");
        using (var founded = StudioFile.Open(first))
        {
            Studios.Found(founded, Morning.AddDays(-1), (Pia.Account, "Pia"));
        }

        var before = Now();
        var watch = Stopwatch.StartNew();
        List<Stage> stages = [.. Enumerable.Range(0, Studio).AsParallel().AsOrdered().Select(at => Opened(at, first))];
        var opened = watch.Elapsed;
        for (var hour = 0; hour < Day.Count; hour++)
        {
            Parallel.For(0, Studio, at =>
            {
                stages[at].MoveTo(Morning.AddHours(hour));
                stages[at].Say(Pia, inGroup: false, Day[hour].Replace("MARK", Mark(at), StringComparison.Ordinal), hasPhoto: false);
            });
        }

        Parallel.ForEach(stages, stage => stage.MoveTo(Morning.AddHours(24)));
        var lived = watch.Elapsed;
        var after = Now();
        stages.ForEach(stage => stage.Dispose());

        output.Print(
            $"""
            studios: {Studio} opened in {opened.TotalSeconds:0.0} s, a day of {Day.Count} messages each and a reminder in {(lived - opened).TotalSeconds:0.0} s
            studios: {Kibibytes(after.Managed - before.Managed):0} KiB managed, {Kibibytes(after.Resident - before.Resident):0} KiB resident a studio
            studios: {(after.Handles - before.Handles) / (double)Studio:0.0} handles a studio; {after.Threads} threads in all
            """);
        Assert.True(lived <= Longest, $"{lived.TotalSeconds:0} s");
        for (var at = 0; at < Studio; at++)
        {
            Assert.True(heard[at].Count > Day.Count, $"Studio {at} heard {heard[at].Count} messages.");
            Assert.Contains(heard[at], said => said.IsPing && said.Text.Contains(Mark(at), StringComparison.Ordinal));
            Assert.Equal([Mark(at)], Marks(string.Join('\n', heard[at].Select(said => said.Text))));
            Assert.Equal([Mark(at)], Marks(Books(at)));
        }
    }

    private static readonly IReadOnlyList<string> Day =
    [
        "room 20C 55%",
        "bought 2 x 1 l white 24.90 lot MARK",
        "pour 30cm panel bloom white for MARK",
        "note 1 a wish of MARK",
        "used 20 ml white",
        "1 dry?",
        "stock white",
        "remind me in 2h look at MARK",
    ];

    // As all begin, from the same first page on.
    private Stage Opened(int at, string first)
    {
        File.Copy(first, PathOf(at));
        var stage = new Stage(Studios.Practice, isSample: false, StudioFile.Open(PathOf(at)));
        heard[at] = [];
        stage.Sent = heard[at].Enqueue;
        stage.Players[Pia.Account] = Pia;
        stage.MoveTo(Morning);
        return stage;
    }

    private static string Mark(int at) => string.Create(CultureInfo.InvariantCulture, $"Q{at:0000}X");

    private string PathOf(int at)
    {
        var own = Directory.CreateDirectory(Path.Combine(folder.Path, at.ToString(CultureInfo.InvariantCulture)));
        return Path.Combine(own.FullName, "studio.db");
    }

    private string Books(int at) => string.Concat(Directory.EnumerateFiles(Path.GetDirectoryName(PathOf(at))!)
        .Select(path => File.ReadAllText(path, Encoding.Latin1)));

    private static List<string> Marks(string text) => [.. AnyMark().Matches(text).Select(match => match.Value).Distinct().Order()];

    private static double Kibibytes(long bytes) => bytes / 1024.0 / Studio;

    private static (long Managed, long Resident, int Handles, int Threads) Now()
    {
        using var us = Process.GetCurrentProcess();
        return (GC.GetTotalMemory(forceFullCollection: true), us.WorkingSet64, Directory.GetFiles("/proc/self/fd").Length, us.Threads.Count);
    }

    [GeneratedRegex("Q[0-9]{4}X")]
    private static partial Regex AnyMark();
}
