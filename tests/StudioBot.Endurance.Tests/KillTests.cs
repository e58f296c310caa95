using System.Diagnostics;
using System.Globalization;
using System.Text.Json.Nodes;
using StudioBot.Host.Tests.Support;
using StudioBot.Records;
using StudioBot.Records.Acts;
using StudioBot.Records.Materials;
using StudioBot.Records.Reminders;
using Xunit.Abstractions;

namespace StudioBot.Endurance.Tests;

/// <summary>The service, killed on the spot again and again: the books lose nothing and have nothing twice. A message
/// may come twice when it was on the wire, and then says so.</summary>
public sealed class KillTests(ITestOutputHelper output) : IAsyncLifetime, IDisposable
{
    private const long Nora = 7;
    private const int Runs = 20;
    private const int Litres = 20;
    // The row of the coming week always waits.
    private const int TheWeek = 1;

    private const string Twice = "You may have this twice";

    private readonly TempFolder home = new();
    private readonly Random random = new(20261125);
    private readonly TimeProvider time = TimeProvider.System;
    private StandIn standIn = null!;
    private Process service = null!;

    private string Folder => Path.Combine(home.Path, "studio");

    public async Task InitializeAsync()
    {
        standIn = await StandIn.Start();
        Directory.CreateDirectory(Folder);
        using var file = Open();
        Studios.Found(file, time.GetUtcNow().AddDays(-1), (Nora, "Nora"));
        file.Write(session =>
        {
            // Nobody's night is now, whenever this runs.
            var now = time.GetUtcNow().AddHours(12).DateTime;
            var quiet = string.Create(CultureInfo.InvariantCulture, $"{now:HH:mm}-{now.AddMinutes(10):HH:mm}");
            var nora = session.Members.ByAccount(Nora);
            session.Studio.Set("quiet", quiet, session.Acts.Begin(new NewAct("studio", nora, "quiet", time.GetUtcNow())));
        });
    }

    public async Task DisposeAsync()
    {
        if (service is { HasExited: false })
        {
            service.Kill();
        }

        service?.Dispose();
        await standIn.DisposeAsync();
    }

    public void Dispose() => home.Dispose();

    public enum Moment
    {
        /// <summary>Some moment from the handing out of the update on, mostly before its commit.</summary>
        BeforeCommit,

        /// <summary>The record can be read in the file: behind the commit, before or in the send.</summary>
        BehindCommit,

        /// <summary>The message has arrived, and nobody told the service so.</summary>
        OnTheWire,

        /// <summary>The service was told a moment ago that the message has arrived.</summary>
        AroundMark,
    }

    [Theory]
    [InlineData(Moment.BeforeCommit)]
    [InlineData(Moment.BehindCommit)]
    [InlineData(Moment.OnTheWire)]
    [InlineData(Moment.AroundMark)]
    public async Task Killed_anywhere_in_a_record_it_is_booked_once_and_answered(Moment moment)
    {
        standIn.Updates.Add(Message(1, $"bought {Litres} x 1 L white 100.00"));
        Serve();
        await standIn.Until(1, call => Says(call, "white bought"));
        var longest = await Latency();
        for (var run = 0; run < Runs; run++)
        {
            await KilledAt(moment, run, longest);
            Serve();
        }

        // The last start answers what is still open.
        for (var run = 0; run < Runs; run++)
        {
            await standIn.Until(1, call => Says(call, Answered(run)));
        }

        await End();
        Judge();
    }

    [Fact]
    public async Task Killed_in_a_digest_nothing_missed_is_left_out_and_each_is_settled_once()
    {
        for (var run = 0; run < Runs; run++)
        {
            Miss(run);
            var sends = standIn.Sent.Count;
            Serve();
            switch (run % 3)
            {
                case 0:
                    await Killed(kill => standIn.Came = call => On(Says(call, $"thing {run}a"), kill));
                    break;
                case 1:
                    await Seen(view => view.Reminders.Waiting() == TheWeek);
                    service.Kill();
                    await Dead();
                    break;
                default:
                    await standIn.Until(standIn.Calls.Count + 1, _ => true);
                    await Task.Delay(random.Next(1500));
                    service.Kill();
                    await Dead();
                    break;
            }

            output.WriteLine($"run {run}: {standIn.Sent.Count - sends} sent, {Waiting() - TheWeek} of 2 not settled");
        }

        Serve();
        for (var run = 0; run < Runs; run++)
        {
            await standIn.Until(1, call => Says(call, $"thing {run}a") && Says(call, $"thing {run}b"));
        }

        await End();
        using var file = Open();
        Assert.Equal(TheWeek, file.Read(view => view.Reminders.Waiting()));
        foreach (var request in Enumerable.Range(0, 2 * Runs).Select(number => Requests.SubjectOf(number + 1)))
        {
            var kept = Assert.Single(file.Read(view => view.Reminders.About(request)));
            Assert.Equal((ReminderState.Done, "in a digest"), (kept.State, kept.Verdict));
        }

        Repeats(Enumerable.Range(0, Runs).Select(run => $"thing {run}a"));
    }

    private async Task KilledAt(Moment moment, int run, TimeSpan longest)
    {
        var update = Message(100 + run, Words(run));
        var answer = Answered(run);
        switch (moment)
        {
            case Moment.BeforeCommit:
                await Killed(
                    kill => standIn.Answered = call => On(
                        HandsOut(call, update), () => After(longest * random.NextDouble() / 2, kill)),
                    update);
                break;
            case Moment.BehindCommit:
                standIn.Updates.Add(update);
                await Seen(view => view.Acts.Recent(null, time.GetUtcNow()).Any(act => act.Words == Words(run)));
                service.Kill();
                await Dead();
                break;
            case Moment.OnTheWire:
                await Killed(kill => standIn.Came = call => On(Says(call, answer), kill), update);
                break;
            default:
                await Killed(
                    kill => standIn.Answered = call => On(
                        Says(call, answer), () => After(TimeSpan.FromMilliseconds(random.Next(30)), kill)),
                    update);
                break;
        }

        output.WriteLine($"run {run}: {Where(run)}");
    }

    // A real process dies in real time: the kill comes somewhere within what it has to do.
    private void After(TimeSpan wait, Action kill) =>
        _ = Task.Delay(wait, time).ContinueWith(_ => kill(), TaskScheduler.Default);

    private async Task Killed(Action<Action> arm, JsonObject? update = null)
    {
        var killed = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        arm(() =>
        {
            service.Kill();
            killed.TrySetResult();
        });
        if (update is not null)
        {
            standIn.Updates.Add(update);
        }

        await killed.Task.WaitAsync(TimeSpan.FromMinutes(1));
        await Dead();
    }

    // Until this can be read in the file, beside the service that writes it.
    private async Task Seen(Func<StudioView, bool> holds)
    {
        var path = Path.Combine(Folder, "studio.db");
        var began = Stopwatch.GetTimestamp();
        while (!StudioFile.Glance(path, holds))
        {
            Assert.True(Stopwatch.GetElapsedTime(began) < TimeSpan.FromMinutes(1), "What was waited for did not happen.");
            await Task.Yield();
        }
    }

    private async Task Dead()
    {
        await service.WaitForExitAsync();
        standIn.Came = _ => { };
        standIn.Answered = _ => { };
    }

    // What of a record stood in the file when the service died.
    private string Where(int run)
    {
        using var file = Open();
        var isBooked = file.Read(view => view.Acts.Recent(null, time.GetUtcNow())).Any(act => act.Words == Words(run));
        var isSent = standIn.Sent.Any(call => Says(call, Answered(run)));
        return isSent ? "behind the send" : isBooked ? "behind the commit" : "before the commit";
    }

    private int Waiting()
    {
        using var file = Open();
        return file.Read(view => view.Reminders.Waiting());
    }

    private void Miss(int run)
    {
        using var file = Open();
        file.Write(session =>
        {
            var nora = session.Members.ByAccount(Nora)!;
            var missed = time.GetUtcNow().AddHours(-3);
            Requests.Ask(session, nora, 2 * run + 1, $"thing {run}a", missed, missed.AddDays(-1));
            Requests.Ask(session, nora, 2 * run + 2, $"thing {run}b", missed.AddHours(1), missed.AddDays(-1));
        });
    }

    // From the handing out of an update to its answer, with some to spare.
    private async Task<TimeSpan> Latency()
    {
        standIn.Updates.Add(Message(2, "ratio 2:1 90 ml"));
        var began = Stopwatch.GetTimestamp();
        await standIn.Until(1, call => Says(call, "by volume"));
        var longest = Stopwatch.GetElapsedTime(began) * 1.2;
        output.WriteLine($"an answer takes {longest.TotalMilliseconds:0} ms or so");
        return longest;
    }

    private void Judge()
    {
        using var file = Open();
        var last = file.Read(view => view.Acts.Recent(null, time.GetUtcNow()))[0].Id;
        var words = file.Read(view => view.Acts.These(Range(last))).Where(act => act.Kind == "used").Select(act => act.Words);
        Assert.Equal(Enumerable.Range(0, Runs).Select(Words), words);
        var white = file.Read(view => view.Materials.All().First(material => material.Name == "white").Id);
        var left = Assert.IsType<Amount.ByVolume>(
            file.Read(view => view.Materials.Levels().First(level => level.MaterialId == white).Left));
        Assert.Equal(Litres * 1000 - Enumerable.Range(0, Runs).Sum(Amount), left.Volume.Millilitres, precision: 3);
        Repeats(Enumerable.Range(0, Runs).Select(Answered));
    }

    // Each is said; what is said again says that it may be.
    private void Repeats(IEnumerable<string> all)
    {
        var doubled = 0;
        foreach (var words in all)
        {
            var said = standIn.Sent.Where(call => Says(call, words)).ToList();
            Assert.NotEmpty(said);
            Assert.All(said.Skip(1), call => Assert.Contains(Twice, call.Text, StringComparison.Ordinal));
            doubled += said.Count - 1;
        }

        output.WriteLine($"{doubled} sent twice of {Runs}");
    }

    private static IEnumerable<long> Range(long last)
    {
        for (var id = 1L; id <= last; id++)
        {
            yield return id;
        }
    }

    private static int Amount(int run) => 101 + run;

    private static string Words(int run) => $"used {Amount(run)} ml white";

    private static string Answered(int run) => $"{Amount(run)} ml white used";

    private static bool Says(Call call, string words) =>
        call.IsSend && call.Text!.Contains(words, StringComparison.Ordinal);

    private bool HandsOut(Call call, JsonObject update) => call.Method == "getUpdates" && standIn.Updates.Waits(update);

    private static void On(bool fits, Action then)
    {
        if (fits)
        {
            then();
        }
    }

    private JsonObject Message(int number, string words) =>
        StandInUpdates.Message(number, Nora, number, words, at: time.GetUtcNow());

    private StudioFile Open() => StudioFile.Open(Path.Combine(Folder, "studio.db"));

    private void Serve()
    {
        service?.Dispose();
        service = BuiltProgram.Start(
            home,
            ["serve", "--data", Folder],
            ("Telegram__Token", StandIn.Token),
            ("Telegram__ApiUrl", standIn.Url.ToString()));
        service.StandardInput.Close();
        _ = service.StandardOutput.ReadToEndAsync();
        _ = service.StandardError.ReadToEndAsync();
    }

    private async Task End()
    {
        using var signal = Process.Start("kill", ["-TERM", $"{service.Id}"]);
        using var enough = new CancellationTokenSource(TimeSpan.FromSeconds(30));
        await service.WaitForExitAsync(enough.Token);
    }
}
