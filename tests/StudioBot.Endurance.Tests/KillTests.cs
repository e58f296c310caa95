using System.Diagnostics;
using StudioBot.Host.Tests.Support;
using StudioBot.Records;
using StudioBot.Records.Backups;
using StudioBot.Records.Materials;
using StudioBot.Records.Reminders;
using Xunit.Abstractions;

namespace StudioBot.Endurance.Tests;

/// <summary>The published service, killed on the spot again and again, at named points and at any: the books lose nothing
/// and have nothing twice, and every message arrives. A message may come twice when it was on the wire, and then says so.
/// <c>STUDIOBOT_KILLS</c> is how often, <c>STUDIOBOT_SEED</c> repeats the draws.</summary>
[Collection(Alone.Name)]
public sealed class KillTests(ITestOutputHelper output)
{
    // Two at a time keep two cores busy.
    private const int Crews = 2;
    private const string Twice = "You may have this twice";

    // A quarter before it is ready: while starting, and in the steps that bring an older file up to date.
    private static readonly KillPoint[] Round =
    [
        KillPoint.Starting, KillPoint.BeforeCommit, KillPoint.BehindCommit, KillPoint.BeforeSend, KillPoint.BehindSend,
        KillPoint.Starting, KillPoint.BeforeMark, KillPoint.BehindMark, KillPoint.Digest, KillPoint.SchemaStep,
        KillPoint.Checkpoint, KillPoint.Backup, KillPoint.Anywhere,
    ];

    private readonly int seed = Printed.Setting("STUDIOBOT_SEED", Environment.TickCount);
    private readonly Lock turn = new();
    private readonly Dictionary<Hit, int> hits = [];
    private readonly SortedSet<long> steps = [];
    private int doubled;

    [Fact]
    public async Task Killed_anywhere_nothing_is_lost_and_nothing_is_booked_twice()
    {
        var kills = Printed.Setting("STUDIOBOT_KILLS", 200);
        output.Print($"kills: seed {seed}, {kills} to come");
        var began = Stopwatch.GetTimestamp();
        await Task.WhenAll(Enumerable.Range(0, Crews).Select(crew =>
            Task.Run(() => Killed(seed + crew, crew, kills / Crews + (crew < kills % Crews ? 1 : 0)))));
        var all = hits.Values.Sum();
        output.Print(
            $"""
            kills: seed {seed}, {all} kills: {Share(Hit.BeforeReady, all)} before ready, {Share(Hit.InACommit, all)} in a commit,
            kills: {Share(Hit.InASend, all)} in a send, {Share(Hit.Elsewhere, all)} elsewhere
            """);
        output.Print(
            $"""
            kills: 0 lost, 0 doubled in the books, {doubled} messages sent twice, each saying so;
            kills: schema left at {string.Join(", ", steps)}; {Stopwatch.GetElapsedTime(began).TotalSeconds:0} s
            """);
        Assert.Equal(kills, all);
        Assert.InRange(hits.GetValueOrDefault(Hit.BeforeReady), kills / 6, kills / 3);
        Assert.InRange(doubled, 0, kills);
    }

    private async Task Killed(int seed, int which, int kills)
    {
        await using var crew = await Crew.Founded(seed, Litres(kills));
        using var older = new OlderStudio(seed);
        for (var kill = 0; kill < kills; kill++)
        {
            var point = Round[(kill + (which * Round.Length / Crews)) % Round.Length];
            var hit = Hit.BeforeReady;
            if (point == KillPoint.SchemaStep)
            {
                var left = await older.Die(kill);
                lock (turn)
                {
                    steps.Add(left);
                }
            }
            else
            {
                hit = await crew.Die(point);
            }

            lock (turn)
            {
                hits[hit] = hits.GetValueOrDefault(hit) + 1;
            }

            output.WriteLine($"crew {which}, kill {kill}, {point}: {hit}");
        }

        // The last start answers what is still open.
        var (code, _) = await crew.Finish(() =>
            Answers(crew).All(words => crew.Service.Calls.Any(call => Crew.Says(call, words))) && crew.HasSaidAll());
        Assert.Equal(0, code);
        Judge(crew, Litres(kills));
    }

    private void Judge(Crew crew, int litres)
    {
        using (var raw = new RawStudio(crew.StudioPath))
        {
            Assert.Equal("ok", raw.One<string>("pragma integrity_check"));
            Assert.Empty(raw.All("pragma foreign_key_check"));
            Assert.Equal(
                Enumerable.Range(0, crew.Told).Select(Crew.Words).Order(),
                raw.All("select words from act where kind = 'used'").Order());
            Assert.Equal(0, raw.One<long>("select coalesce(sum(cents), 0) from money_entry"));
            Assert.Equal(
                Microlitres(litres, crew.Told),
                raw.One<long>("select sum(microlitres) from stock_entry where microlitres is not null"));
            Assert.Equal(0, raw.One<long>("select count(*) from inbox where state <> 'done'"));
            Assert.Equal(0, raw.One<long>("select count(*) from post where state <> 'sent'"));
        }

        using var file = StudioFile.Open(crew.StudioPath);
        var white = file.Read(view => view.Materials.All().First(material => material.Name == "white").Id);
        var left = Assert.IsType<Amount.ByVolume>(
            file.Read(view => view.Materials.Levels().First(level => level.MaterialId == white).Left));
        Assert.Equal(Microlitres(litres, crew.Told) / 1000.0, left.Volume.Millilitres, precision: 3);
        Assert.Equal(0, file.Read(view => view.Money.Balances()).Sum(line => line.Sum.Cents));
        for (var thing = 1; thing <= 2 * crew.Missed; thing++)
        {
            var kept = Assert.Single(file.Read(view => view.Reminders.About(Requests.SubjectOf(thing))));
            Assert.Equal((ReminderState.Done, "in a digest"), (kept.State, kept.Verdict));
        }

        Backups(crew);
        Repeats(crew);
    }

    // What counts as a backup is one, and no half of one lies beside them.
    private static void Backups(Crew crew)
    {
        var backups = BackupFolder.Of(crew.StudioPath);
        Assert.NotEmpty(backups.All());
        Assert.All(backups.All(), backup => Assert.Equal(backup.Sha256, Proof.Sum(backups.FileOf(backup))));
        Assert.Empty(Directory.EnumerateFiles(backups.Folder, "*.unfinished*"));
    }

    // Each is said; what is said again says that it may be.
    private void Repeats(Crew crew)
    {
        foreach (var words in Answers(crew))
        {
            var said = crew.Service.Sent.Where(call => Crew.Says(call, words)).ToList();
            Assert.NotEmpty(said);
            Assert.All(said.Skip(1), call => Assert.Contains(Twice, call.Text, StringComparison.Ordinal));
            lock (turn)
            {
                doubled += words.EndsWith("b.", StringComparison.Ordinal) ? 0 : said.Count - 1;
            }
        }
    }

    // Both things of a digest stand in one message.
    private static IEnumerable<string> Answers(Crew crew) => Enumerable.Range(0, crew.Told).Select(Crew.Answer)
        .Concat(Enumerable.Range(0, crew.Missed).SelectMany(time => new[] { Crew.Thing(time, 'a'), Crew.Thing(time, 'b') }));

    private static long Microlitres(int litres, int told) =>
        (1000L * 1000 * litres) - (1000L * Enumerable.Range(0, told).Sum(Crew.Amount));

    // Enough for all that will be used, in hundreds.
    private static int Litres(int kills) => ((Enumerable.Range(0, kills).Sum(Crew.Amount) / 1000 / 100) + 1) * 100;

    private string Share(Hit hit, int all) =>
        FormattableString.Invariant($"{hits.GetValueOrDefault(hit)} ({100.0 * hits.GetValueOrDefault(hit) / all:0} %)");
}
