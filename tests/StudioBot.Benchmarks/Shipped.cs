using System.Diagnostics;
using StudioBot.Endurance.Tests;

namespace StudioBot.Benchmarks;

/// <summary>The program as it is shipped: published for this machine with its runtime, ready to run.</summary>
/// <param name="server">The chat service.</param>
/// <param name="program">The program.</param>
internal sealed class Shipped(ChatServer server, string program)
{
    private const int Starts = 5;

    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(1);
    private static readonly TimeSpan Calm = TimeSpan.FromSeconds(10);
    private static readonly TimeSpan Idle = TimeSpan.FromSeconds(30);

    /// <summary>Publishes it below this folder; none where that does not work.</summary>
    public static string? Publish(string folder, TextWriter output)
    {
        var target = Path.Combine(folder, "published");
        var (works, said) = Publishing.Into(target, "-c", "Release", "--self-contained");
        if (!works)
        {
            output.WriteLine(said);
        }

        return works ? Path.Combine(target, "studiobot") : null;
    }

    /// <summary>From its start to its first poll, the median of some starts, in milliseconds; the files are warm.
    /// </summary>
    public async Task<double> ToReady(string folder)
    {
        List<double> took = [];
        for (var start = 0; start < Starts; start++)
        {
            var began = Stopwatch.GetTimestamp();
            await using var bot = await Ready(folder);
            took.Add(Stopwatch.GetElapsedTime(began).TotalMilliseconds);
            await bot.End();
        }

        return took.Order().ElementAt(Starts / 2);
    }

    /// <summary>What it takes from a cold start on: the first replies, then nothing to do, then a picture.</summary>
    public async Task<Life> Live(string folder)
    {
        await using var bot = await Ready(folder);
        var first = await new Loads(server, bot, 1).OneByOne(10, isAsked: true);
        await Task.Delay(Calm);
        var before = bot.Cpu;
        await Task.Delay(Idle);
        var idle = (bot.Cpu - before) / Idle.TotalSeconds;
        var plain = bot.Memory;
        server.Clear();
        server.Say((StudioService.FirstMember, "amounts 30cm panel bloom 6 colours", StudioService.Now.AddMinutes(5)));
        await server.Until(1, Patience);
        await Task.Delay(Calm);
        var pictured = bot.Memory;
        await bot.End();
        return new Life(first.Quantile(1), idle, plain, pictured);
    }

    private async Task<Child> Ready(string folder)
    {
        server.Clear();
        var bot = Child.StartOwnRuntime(
            program,
            [("Telegram__Token", ChatServer.Token), ("Telegram__ApiUrl", server.Url.ToString()), ("Health__Port", "0")],
            "serve", "--data", folder);
        await server.Polled(Patience);
        return bot;
    }

    /// <summary>What was seen of one run of the shipped program.</summary>
    /// <param name="SlowestFirst">The slowest of its first ten replies, in milliseconds.</param>
    /// <param name="IdleCpu">Processor time while there is nothing to do, in milliseconds a second.</param>
    /// <param name="Plain">Its memory before the first picture, in MiB.</param>
    /// <param name="Pictured">Its memory after the first picture, in MiB.</param>
    public sealed record Life(
        double SlowestFirst,
        double IdleCpu,
        (double Resident, double Own) Plain,
        (double Resident, double Own) Pictured);
}
