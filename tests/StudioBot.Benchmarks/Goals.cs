namespace StudioBot.Benchmarks;

/// <summary>The table of goals: each measured, in one run with the ceilings it is held against.</summary>
internal static class Goals
{
    private const int Members = 200;

    /// <summary>Measures and prints.</summary>
    public static async Task<int> Run(TextWriter output)
    {
        var library = SlowDisk.Build();
        var quick = library is null ? null : new SlowDisk(library, TimeSpan.Zero);
        var slow = library is null ? null : new SlowDisk(library, TimeSpan.FromMilliseconds(10));
        await using var server = await ChatServer.Start();

        Load echo, committing;
        {
            await using var bot = Child.Own(quick, "echo", server.Url.ToString());
            echo = await Warm(server, bot, output, "echo", loads => loads.Backlog(4000, isAsked: true));
        }

        using (var home = new Home())
        {
            await using var bot = Child.Own(quick, "echo", server.Url.ToString(), home.File("plain.db"));
            committing = await Warm(server, bot, output, "plain bot, one commit a message", loads => loads.Backlog(4000, isAsked: false));
        }

        var asking = await Studio(server, output, quick, "asking, backlog", false, loads => loads.Backlog(4000, isAsked: true));
        var used = await Studio(server, output, quick, "used, backlog", false, loads => loads.Backlog(4000, isAsked: false));
        await Studio(server, output, quick, "used, 25/s", false, loads => loads.Steady(25, TimeSpan.FromSeconds(20), isAsked: false));
        await Studio(server, output, slow, "used, 30/s, slow disk", false, loads => loads.Steady(30, TimeSpan.FromSeconds(30), isAsked: false));
        await Studio(server, output, slow, "used, 250/s, slow disk", false, loads => loads.Steady(250, TimeSpan.FromSeconds(16), isAsked: false));
        await Studio(server, output, quick, "asking, 20/s, paced", true, loads => loads.Steady(20, TimeSpan.FromSeconds(20), isAsked: true));
        output.WriteLine($"asking / echo {asking.Rate / echo.Rate:0.00}; used / plain {used.Rate / committing.Rate:0.00}; CPU {asking.Cpu / echo.Cpu:0.00}");
        return 0;
    }

    private static async Task<Load> Studio(
        ChatServer server, TextWriter output, SlowDisk? disk, string name, bool isPaced, Func<Loads, Task<Load>> load)
    {
        using var home = new Home();
        StudioService.Found(home.Path, Members, StudioService.Now.AddDays(-1));
        await using var bot = Child.Own(disk, "studio", home.Path, server.Url.ToString(), isPaced ? "paced" : "at once");
        server.Say(Enumerable.Range(0, 5).Select(lot =>
            (StudioService.FirstMember, $"bought 100 x 1 L white 500.0{lot}", StudioService.Now.AddMinutes(-60 + lot))));
        return await Warm(server, bot, output, name, load, 5);
    }

    private static async Task<Load> Warm(
        ChatServer server, Child bot, TextWriter output, string name, Func<Loads, Task<Load>> load, int before = 0)
    {
        if (before > 0)
        {
            await server.Until(before, TimeSpan.FromMinutes(1));
        }

        var loads = new Loads(server, bot, Members);
        await loads.Backlog(800, isAsked: true);
        await loads.Backlog(800, isAsked: false);
        var found = await load(loads);
        output.WriteLine(FormattableString.Invariant(
            $"{name,-34} {found.Rate,7:0} /s  p50 {found.Quantile(0.5),7:0.0}  p95 {found.Quantile(0.95),7:0.0}  p99 {found.Quantile(0.99),7:0.0} ms  cpu {found.Cpu:0.00} ms  flushes {found.Flushes:0.00}"));
        return found;
    }

    private sealed class Home : IDisposable
    {
        public string Path { get; } = Directory.CreateTempSubdirectory("studiobot-bench-").FullName;

        public string File(string name) => System.IO.Path.Combine(Path, name);

        public void Dispose() => Directory.Delete(Path, recursive: true);
    }
}
