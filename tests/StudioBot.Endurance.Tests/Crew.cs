using System.Diagnostics;
using System.Globalization;
using System.Text.Json.Nodes;
using StudioBot.Host.Tests.Support;
using StudioBot.Records;
using StudioBot.Records.Acts;
using StudioBot.Records.Backups;
using static StudioBot.Endurance.Tests.Patience;

namespace StudioBot.Endurance.Tests;

/// <summary>One studio with its service, its chat service and what two members tell it; the service can be killed at any
/// point and started again.</summary>
internal sealed class Crew : IAsyncDisposable
{
    public const long Nora = 7;
    public const long Pia = 8;

    // The row of the coming week always waits.
    private const int TheWeek = 1;

    private readonly TempFolder home = new();
    private readonly Random random;
    private readonly TimeProvider time = TimeProvider.System;
    private readonly StandIn standIn;
    private Process? service;
    private int pollsBefore;
    private int updates = 100;
    private int told;
    private int missed;
    private int backups;
    private TimeSpan toReady = TimeSpan.FromSeconds(1);
    private TimeSpan toAnswer = TimeSpan.FromSeconds(1);

    private Crew(StandIn standIn, int seed) => (this.standIn, random) = (standIn, new Random(seed));

    /// <summary>Where the studio lies.</summary>
    public string StudioPath => Path.Combine(Folder, "studio.db");

    /// <summary>What was told, in order.</summary>
    public int Told => told;

    /// <summary>How often something was missed: two things each time.</summary>
    public int Missed => missed;

    /// <summary>All that was put to be said has been.</summary>
    public bool HasSaidAll()
    {
        using var studio = new RawStudio(StudioPath);
        return studio.One<long>("select count(*) from post where state <> 'sent'") == 0;
    }

    public StandIn Service => standIn;

    private string Folder => Path.Combine(home.Path, "studio");

    private int Letters => standIn.Calls.Count(call => call.Method == "sendDocument");

    private bool IsReady => Polls > pollsBefore;

    private int Polls => standIn.Calls.Count(call => call.Method == "getUpdates");

    /// <summary>A studio whose shelf is full of white.</summary>
    public static async Task<Crew> Founded(int seed, int litres)
    {
        var crew = new Crew(await StandIn.Start(), seed);
        Directory.CreateDirectory(crew.Folder);
        using var file = StudioFile.Open(crew.StudioPath);
        Studios.Found(file, crew.time.GetUtcNow().AddDays(-1), (Nora, "Nora"), (Pia, "Pia"));
        file.Write(session =>
        {
            // Nobody's night is now, whenever this runs.
            var now = crew.time.GetUtcNow().AddHours(12).DateTime;
            var quiet = string.Create(CultureInfo.InvariantCulture, $"{now:HH:mm}-{now.AddMinutes(10):HH:mm}");
            var nora = session.Members.ByAccount(Nora);
            session.Studio.Set("quiet", quiet, session.Acts.Begin(new NewAct("studio", nora, "quiet", crew.time.GetUtcNow())));
        });
        file.Dispose();
        await crew.Bought(litres);
        return crew;
    }

    /// <summary>How much was used by what was told so, in millilitres.</summary>
    public static int Amount(int number) => 11 + number;

    public static string Words(int number) => $"used {Amount(number)} ml white";

    public static string Answer(int number) => $"{Amount(number)} ml white used";

    /// <summary>Somebody uses some white.</summary>
    /// <returns>The update.</returns>
    public JsonObject Tell()
    {
        var number = told++;
        return Say(number % 2 == 0 ? Nora : Pia, Words(number));
    }

    /// <summary>Starts it and kills it there.</summary>
    /// <returns>Where it was hit.</returns>
    public async Task<Hit> Die(KillPoint point)
    {
        if (point == KillPoint.Digest)
        {
            Miss();
        }

        var number = told;
        var update = Tell();
        if (point == KillPoint.Backup)
        {
            backups++;
            Say(Nora, "backup");
        }

        var death = Armed(point, update, number);
        Serve();
        await death();
        var wasReady = IsReady;
        Disarm();
        return Found(number, wasReady, wasHandedOut: wasReady);
    }

    /// <summary>Starts it, lets it finish all that is open and ends it as the system would.</summary>
    /// <returns>How it ended, and after how long.</returns>
    public async Task<(int Code, TimeSpan Took)> Finish(Func<bool> isDone)
    {
        Serve();
        await Ready();
        await Until(isDone);
        return await End();
    }

    /// <summary>Starts it.</summary>
    public void Serve()
    {
        service?.Dispose();
        pollsBefore = Polls;
        service = BuiltProgram.Start(
            PublishedProgram.Path,
            home,
            ["serve", "--data", Folder],
            ("Telegram__Token", StandIn.Token),
            ("Telegram__ApiUrl", standIn.Url.ToString()));
        service.StandardInput.Close();
        _ = service.StandardOutput.ReadToEndAsync();
        _ = service.StandardError.ReadToEndAsync();
    }

    /// <summary>Until it asks for updates.</summary>
    public Task Ready() => Until(() => IsReady);

    /// <summary>Ends it as the system would.</summary>
    public async Task<(int Code, TimeSpan Took)> End()
    {
        var began = Stopwatch.GetTimestamp();
        using var signal = Process.Start("kill", ["-TERM", $"{service!.Id}"]);
        using var enough = new CancellationTokenSource(TimeSpan.FromSeconds(30));
        await service.WaitForExitAsync(enough.Token);
        return (service.ExitCode, Stopwatch.GetElapsedTime(began));
    }

    /// <summary>Somebody uses some white, hears that it is booked, and a while passes.</summary>
    public async Task TellAndWait(TimeSpan @while)
    {
        var number = told;
        Tell();
        await Until(() => standIn.Sent.Any(call => Says(call, Answer(number))));
        await Task.Delay(@while, time);
    }

    /// <summary>What it holds of the machine's memory, and how many files it has open.</summary>
    public (double MiB, int Handles) Weight()
    {
        service!.Refresh();
        return (service.WorkingSet64 / 1048576.0, Directory.GetFiles($"/proc/{service.Id}/fd").Length);
    }

    public async ValueTask DisposeAsync()
    {
        if (service is { HasExited: false })
        {
            service.Kill();
            await service.WaitForExitAsync();
        }

        service?.Dispose();
        await standIn.DisposeAsync();
        home.Dispose();
    }

    public static bool Says(Call call, string words) => call.IsSend && call.Text!.Contains(words, StringComparison.Ordinal);

    private JsonObject Say(long who, string words)
    {
        var id = updates++;
        var update = StandInUpdates.Message(id, who, id, words, at: time.GetUtcNow());
        standIn.Updates.Add(update);
        return update;
    }

    private async Task Bought(int litres)
    {
        for (var lot = 0; lot * 100 < litres; lot++)
        {
            standIn.Updates.Add(StandInUpdates.Message(
                1 + lot, Nora, 1 + lot, $"bought 100 x 1 L white 500.{lot:00}", at: time.GetUtcNow()));
        }

        var began = Stopwatch.GetTimestamp();
        Serve();
        await Ready();
        toReady = Stopwatch.GetElapsedTime(began);
        await Until(() => standIn.Sent.Count(call => Says(call, "white bought")) * 100 >= litres);
        toAnswer = (Stopwatch.GetElapsedTime(began) - toReady) * 1.2;
        await End();

        // The first start is slower than those that are killed.
        began = Stopwatch.GetTimestamp();
        Serve();
        await Ready();
        toReady = Stopwatch.GetElapsedTime(began) * 0.9;
        await End();
    }

    // What waits for the moment and kills.
    private Func<Task> Armed(KillPoint point, JsonObject update, int number)
    {
        var killed = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        void Kill()
        {
            service!.Kill();
            killed.TrySetResult();
        }

        Task Hooked() => killed.Task.WaitAsync(Enough);
        switch (point)
        {
            case KillPoint.Starting:
                return async () => await KillAfter(toReady * random.NextDouble());
            case KillPoint.BeforeCommit:
                standIn.Answered = call => On(
                    call.Method == "getUpdates" && standIn.Updates.Waits(update),
                    () => _ = Later(toAnswer * random.NextDouble() / 2, Kill));
                return Hooked;
            case KillPoint.BehindCommit:
                return () => KillWhen("select count(*) from act where words = $1", Words(number));
            case KillPoint.BeforeSend:
                // It is not answered before that, so that no look comes too late.
                var died = new TaskCompletionSource();
                standIn.Came = call => On(Says(call, Answer(number)), () => died.Task.Wait(Enough));
                return async () =>
                {
                    await KillWhen(
                        "select count(*) from post where state = 'sending' and payload like $1", $"%{Answer(number)}%");
                    died.SetResult();
                };
            case KillPoint.BehindSend:
                standIn.Came = call => On(Says(call, Answer(number)), Kill);
                return Hooked;
            case KillPoint.BeforeMark:
                standIn.Answered = call => On(Says(call, Answer(number)), Kill);
                return Hooked;
            case KillPoint.BehindMark:
                return () => KillWhen(
                    "select count(*) from post where state = 'sent' and payload like $1", $"%{Answer(number)}%");
            case KillPoint.Digest:
                return random.Next(3) switch
                {
                    0 => () => KillWhen($"select count(*) <= {TheWeek} from reminder where state <> 'done'"),
                    1 => HookedOnDigest,
                    _ => async () =>
                    {
                        await Ready();
                        await KillAfter(toAnswer * random.NextDouble());
                    },
                };
            case KillPoint.Checkpoint:
                return async () =>
                {
                    await Until(() => standIn.Sent.Any(call => Says(call, Answer(number))));
                    await KillInCheckpoint();
                };
            case KillPoint.Backup:
                return async () =>
                {
                    await Until(IsCopying);
                    await KillAfter(TimeSpan.FromMilliseconds(20 * random.NextDouble()));
                };
            default:
                return async () =>
                {
                    await Ready();
                    await KillAfter(toAnswer * 1.5 * random.NextDouble());
                };
        }

        Task HookedOnDigest()
        {
            var thing = Thing(missed - 1, 'a');
            standIn.Came = call => On(Says(call, thing), Kill);
            return Hooked();
        }
    }

    /// <summary>What was missed the how-manieth time.</summary>
    public static string Thing(int time, char which) => $"thing {time}{which}.";

    private void Miss()
    {
        var number = missed++;
        using var file = StudioFile.Open(StudioPath);
        file.Write(session =>
        {
            var nora = session.Members.ByAccount(Nora)!;
            var then = time.GetUtcNow().AddHours(-3);
            Requests.Ask(session, nora, 2 * number + 1, Thing(number, 'a').TrimEnd('.'), then, then.AddDays(-1));
            Requests.Ask(session, nora, 2 * number + 2, Thing(number, 'b').TrimEnd('.'), then.AddHours(1), then.AddDays(-1));
        });
    }

    // A small studio is copied in the time of a look or two: then the one that is there has just been made.
    private bool IsCopying() =>
        Directory.Exists(BackupFolder.Of(StudioPath).Folder)
        && (Directory.EnumerateFiles(BackupFolder.Of(StudioPath).Folder, "*.unfinished").Any() || Letters == backups);

    // A real process dies in real time.
    private async Task Later(TimeSpan wait, Action kill)
    {
        await Task.Delay(wait, time);
        kill();
    }

    private Task KillAfter(TimeSpan wait) => Later(wait, service!.Kill);

    private async Task KillWhen(string query, params object[] values)
    {
        var began = Stopwatch.GetTimestamp();
        using var studio = new RawStudio(StudioPath);
        while (studio.One<long>(query, values) == 0)
        {
            Assert.True(Stopwatch.GetElapsedTime(began) < Enough, $"Did not happen: {query}");
            await Task.Yield();
        }

        service!.Kill();
    }

    // At its end the service writes the log back: the file changes, and the log goes with the last of it.
    private async Task KillInCheckpoint()
    {
        var before = File.GetLastWriteTimeUtc(StudioPath);
        using var signal = Process.Start("kill", ["-TERM", $"{service!.Id}"]);
        var began = Stopwatch.GetTimestamp();
        while (File.GetLastWriteTimeUtc(StudioPath) == before && !service.HasExited)
        {
            Assert.True(Stopwatch.GetElapsedTime(began) < Enough, "The log was not written back.");
        }

        if (!service.HasExited)
        {
            service.Kill();
        }

        await service.WaitForExitAsync();
    }

    private void Disarm()
    {
        service!.WaitForExit();
        standIn.Came = _ => { };
        standIn.Answered = _ => { };
    }

    // What of a record stood in the file when the service died.
    private Hit Found(int number, bool wasReady, bool wasHandedOut)
    {
        var hasLog = new FileInfo(StudioPath + "-wal") is { Exists: true, Length: > 0 };
        using var studio = new RawStudio(StudioPath);
        return !wasReady ? Hit.BeforeReady
            : !hasLog ? Hit.Elsewhere
            : studio.One<long>("select count(*) from post where state = 'sending'") > 0 ? Hit.InASend
            : wasHandedOut && studio.One<long>("select count(*) from act where words = $1", Words(number)) == 0
                ? Hit.InACommit
            : Hit.Elsewhere;
    }

    private static void On(bool fits, Action then)
    {
        if (fits)
        {
            then();
        }
    }
}
