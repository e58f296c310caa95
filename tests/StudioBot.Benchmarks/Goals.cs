using System.Globalization;

namespace StudioBot.Benchmarks;

/// <summary>The table of goals: each measured, in one run with the ceilings that it is held against.</summary>
internal sealed class Goals
{
    private const int Members = 200;
    private const int Backlog = 2000;

    private readonly ChatServer server;
    private readonly TextWriter output;
    private readonly SlowDisk? counted;
    private readonly SlowDisk? slow;

    private Goals(ChatServer server, TextWriter output)
    {
        (this.server, this.output) = (server, output);
        if (SlowDisk.Build() is { } library)
        {
            counted = new SlowDisk(library, TimeSpan.Zero);
            slow = new SlowDisk(library, TimeSpan.FromMilliseconds(10));
        }
    }

    /// <summary>Measures and prints.</summary>
    public static async Task Run(TextWriter output)
    {
        await using var server = await ChatServer.Start();
        await new Goals(server, output).Run();
    }

    /// <summary>One load alone, for whoever looks at it with a profiler.</summary>
    public static async Task RunOne(TextWriter output, bool isAsked, int messages)
    {
        await using var server = await ChatServer.Start();
        var load = await new Goals(server, output).Studio(
            null, isPaced: false, loads => loads.Backlog(messages, isAsked));
        output.WriteLine(load is null ? "not carried" : Say($"{load.Rate:0}/s, {load.Cpu:0.00} ms of processor a message"));
    }

    /// <summary>What hardly hangs on how fast the machine is: the more, the worse.</summary>
    /// <param name="withTimes">With the times, too, which vary by more than a tenth.</param>
    public static async Task<IReadOnlyList<(string Name, double Value)>> Ratios(bool withTimes)
    {
        await using var server = await ChatServer.Start();
        var goals = new Goals(server, TextWriter.Null);
        var asking = await goals.Studio(goals.counted, isPaced: false, loads => loads.Backlog(Backlog, isAsked: true));
        var used = await goals.Studio(goals.counted, isPaced: false, loads => loads.Backlog(Backlog, isAsked: false));
        List<(string, double)> all =
        [
            ("flushes of an asking message in a backlog", asking!.Flushes),
            ("flushes of a used in a backlog", used!.Flushes),
        ];
        if (withTimes)
        {
            var echo = await goals.Echo(commits: false, isAsked: true);
            var plain = await goals.Echo(commits: true, isAsked: false);
            all.AddRange(
            [
                ("processor time of an asking message, echoes", asking.Cpu / echo!.Cpu),
                ("processor time of a used, echoes that commit", used.Cpu / plain!.Cpu),
                ("time of an asking message in a backlog, echoes", echo.Rate / asking.Rate),
                ("time of a used in a backlog, echoes that commit", plain.Rate / used.Rate),
            ]);
        }

        return all;
    }

    private async Task Run()
    {
        if (counted is null)
        {
            output.WriteLine("No C compiler here: flushes are not counted, and no disk is slow.");
        }

        output.WriteLine("| what | goal | reached |\n|---|---|---|");
        var (micros, bytes, asked) = Functions.Asking();
        Row($"reading and answering, median of {asked} messages", "50 µs, 10 kB", Say($"{micros:0} µs, {bytes / 1000.0:0.0} kB"));
        Row("next due of 1,000,000 reminders", "1 ms", Say($"{Functions.NextDueAtAMillion():0.00} ms"));

        var echo = await Echo(commits: false, isAsked: true);
        var plain = await Echo(commits: true, isAsked: false);
        var asking = await Studio(counted, isPaced: false, loads => loads.Backlog(Backlog, isAsked: true));
        Row("asking, backlog, pace off, of the echo's rate", "60 %", Ratio(asking?.Rate, echo?.Rate, asking));
        Row("processor time a message, of the echo's", "175 %", Ratio(asking?.Cpu, echo?.Cpu, null));
        var used = await Studio(counted, isPaced: false, loads => loads.Backlog(Backlog, isAsked: false));
        Row("`used`, backlog, of a plain bot's rate that commits each", "100 %", Ratio(used?.Rate, plain?.Rate, used));
        Row("flushes a message in a backlog", "0.1", Counted(used));
        var even = await Studio(counted, isPaced: false, loads => loads.Steady(25, TimeSpan.FromSeconds(20), isAsked: false));
        Row("flushes a message at 25/s", "2", Counted(even));
        var paced = await Studio(counted, isPaced: true, async loads =>
        {
            // What went out to get warm is in no one's way any more.
            await Task.Delay(TimeSpan.FromSeconds(3));
            return await loads.Steady(20, TimeSpan.FromSeconds(20), isAsked: true);
        });
        Row(
            "20/s over 200 chats, paced, half, of twenty, of a hundred", "p99 50 ms",
            Say($"{paced?.Quantile(0.5):0}, {paced?.Quantile(0.95):0}, {paced?.Quantile(0.99):0} ms"));
        if (slow is not null)
        {
            var thirty = await Studio(slow, isPaced: false, loads => loads.Steady(30, TimeSpan.FromSeconds(30), isAsked: false));
            Row("30/s on a disk that takes 10 ms to flush, slowest of twenty", "60 ms", Told(thirty, 0.95));
            var many = await Studio(slow, isPaced: false, loads => loads.Steady(250, TimeSpan.FromSeconds(16), isAsked: false));
            Row("250/s on that disk, carried", "250/s", Told(many, 0.95));
        }

        await AsShipped();
    }

    private async Task AsShipped()
    {
        using var home = new Home();
        if (Shipped.Publish(home.Path, output) is not { } program)
        {
            output.WriteLine("It could not be published here.");
            return;
        }

        var folder = Path.Combine(home.Path, "studio");
        StudioService.Found(folder, 1, StudioService.Now.AddDays(-1));
        var shipped = new Shipped(server, program);
        Row("published: from start to the first poll, median of five", "500 ms", Say($"{await shipped.ToReady(folder):0} ms"));
        var life = await shipped.Live(folder);
        Row("published: slowest of the first ten replies", "100 ms", Say($"{life.SlowestFirst:0} ms"));
        Row("published: processor with nothing to do", "3 ms/s", Say($"{life.IdleCpu:0.0} ms/s"));
        Row("published: memory before the first picture", "90 MB", Held(life.Plain));
        Row("published: memory after it", "150 MB", Held(life.Pictured));
    }

    private static string Held((double Resident, double Own) memory) =>
        Say($"{memory.Resident * 1.048576:0} MB resident, {memory.Own * 1.048576:0} MB of it its own");

    private string Counted(Load? load) =>
        load is null ? "not carried" : counted is null ? "not counted" : Say($"{load.Flushes:0.00}");

    private void Row(string what, string goal, string reached) => output.WriteLine($"| {what} | {goal} | {reached} |");

    private async Task<Load?> Echo(bool commits, bool isAsked)
    {
        using var home = new Home();
        await using var bot = commits
            ? Child.Own(counted, "echo", server.Url.ToString(), Path.Combine(home.Path, "plain.db"))
            : Child.Own(counted, "echo", server.Url.ToString());
        return await Warm(bot, loads => loads.Backlog(Backlog, isAsked));
    }

    private async Task<Load?> Studio(SlowDisk? disk, bool isPaced, Func<Loads, Task<Load>> load)
    {
        using var home = new Home();
        StudioService.Found(home.Path, Members, StudioService.Now.AddDays(-1));
        await using var bot = Child.Own(disk, "studio", home.Path, server.Url.ToString(), isPaced ? "paced" : "at once");
        server.Clear();
        server.Say(Loads.Paints.Select((paint, lot) =>
            (StudioService.FirstMember, $"bought 100 x 1 L {paint} 500.0{lot}", StudioService.Now.AddMinutes(-60 + lot))));
        await server.Until(Loads.Paints.Count, TimeSpan.FromMinutes(1));
        return await Warm(bot, load);
    }

    // None where it did not come through.
    private async Task<Load?> Warm(Child bot, Func<Loads, Task<Load>> load)
    {
        try
        {
            var loads = new Loads(server, bot, Members);
            await loads.Backlog(400, isAsked: true);
            await loads.Backlog(400, isAsked: false);
            return await load(loads);
        }
        catch (TimeoutException late)
        {
            output.WriteLine(late.Message);
            server.Forget();
            return null;
        }
    }

    private static string Ratio(double? own, double? ceiling, Load? load) =>
        own is null || ceiling is null ? "not carried"
        : load is null ? Say($"{own / ceiling:0 %} ({own:0.00} of {ceiling:0.00} ms)")
        : Say($"{own / ceiling:0.0 %} ({own:0}/s of {ceiling:0}/s)");

    private static string Told(Load? load, double share) =>
        load is null ? "not carried" : Say($"{load.Rate:0}/s, {load.Quantile(share):0} ms, {load.Flushes:0.00} flushes a message");

    private static string Say(FormattableString words) => words.ToString(CultureInfo.InvariantCulture);

    private sealed class Home : IDisposable
    {
        public string Path { get; } = Directory.CreateTempSubdirectory("studiobot-bench-").FullName;

        public void Dispose() => Directory.Delete(Path, recursive: true);
    }
}
