using System.Diagnostics;

namespace StudioBot.Benchmarks;

/// <summary>What one load came to.</summary>
/// <param name="Messages">How many were said.</param>
/// <param name="Seconds">From the first one to the last reply.</param>
/// <param name="Cpu">Processor time of the bot, in milliseconds a message.</param>
/// <param name="Flushes">Flushes a message.</param>
/// <param name="Latencies">How long each reply took, in milliseconds, sorted.</param>
internal sealed record Load(int Messages, double Seconds, double Cpu, double Flushes, IReadOnlyList<double> Latencies)
{
    /// <summary>Messages a second.</summary>
    public double Rate => Messages / Seconds;

    /// <summary>That share of the replies took no longer.</summary>
    public double Quantile(double share) => Latencies[Math.Min(Latencies.Count - 1, (int)(share * Latencies.Count))];
}

/// <summary>Loads that a bot is put under.</summary>
/// <param name="server">The chat service.</param>
/// <param name="bot">The bot.</param>
/// <param name="members">How many people write, each in private.</param>
internal sealed class Loads(ChatServer server, Child bot, int members)
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    // What is answered in words; a picture takes as long as some hundred of these.
    private static readonly string[] Questions =
    [
        "ratio 3:1 250 ml", "resin 30x40 2mm", "dew 20C 60%", "convert 8 fl oz to ml", "resin 600 ml 2:1",
        "flow ford4 22 s", "ratio 2:1 have 120 A 50 B", "spin 30cm round 90rpm 15s", "stock white", "convert 70F to C",
    ];

    /// <summary>What is used, in turn.</summary>
    public static IReadOnlyList<string> Paints { get; } = ["white", "lamp black", "ultramarine", "magenta", "ochre"];

    private int said;

    /// <summary>All at once: as fast as it can.</summary>
    public async Task<Load> Backlog(int messages, bool isAsked)
    {
        var (cpu, flushes) = Before();
        var began = Stopwatch.GetTimestamp();
        server.Say(Enumerable.Range(0, messages).Select(_ => Next(isAsked)));
        await server.Until(messages, Patience);
        return After(messages, cpu, flushes, Stopwatch.GetElapsedTime(began, server.LastReplyAt).TotalSeconds);
    }

    /// <summary>So many a second, evenly.</summary>
    public async Task<Load> Steady(double aSecond, TimeSpan length, bool isAsked)
    {
        var (cpu, flushes) = Before();
        var began = Stopwatch.GetTimestamp();
        var messages = 0;
        while (Stopwatch.GetElapsedTime(began) is var gone && gone < length)
        {
            var due = (int)(gone.TotalSeconds * aSecond);
            server.Say([.. Enumerable.Range(0, due - messages).Select(_ => Next(isAsked))]);
            messages = Math.Max(messages, due);
            await Task.Delay(1);
        }

        await server.Until(messages, Patience);
        return After(messages, cpu, flushes, Stopwatch.GetElapsedTime(began, server.LastReplyAt).TotalSeconds);
    }

    /// <summary>One after the other, each once the one before was answered.</summary>
    public async Task<Load> OneByOne(int messages, bool isAsked)
    {
        var (cpu, flushes) = Before();
        var began = Stopwatch.GetTimestamp();
        for (var message = 1; message <= messages; message++)
        {
            server.Say(Next(isAsked));
            await server.Until(message, Patience);
        }

        return After(messages, cpu, flushes, Stopwatch.GetElapsedTime(began).TotalSeconds);
    }

    private (double Cpu, long Flushes) Before()
    {
        server.Clear();
        return (bot.Cpu, bot.Flushes);
    }

    private Load After(int messages, double cpu, long flushes, double seconds) => new(
        messages,
        seconds,
        (bot.Cpu - cpu) / messages,
        (double)(bot.Flushes - flushes) / messages,
        server.Latencies);

    // Never the same twice in a row by the same member, who would be asked whether that is meant; and by their own clocks
    // nobody writes so fast as to be slowed down.
    private (long Who, string Words, DateTimeOffset At) Next(bool isAsked)
    {
        var number = said++;
        var words = isAsked ? Questions[number % Questions.Length] : $"used {11 + number / members % 50} ml {Paints[number % Paints.Count]}";
        return (StudioService.FirstMember + number % members, words, StudioService.Now.AddSeconds(number / members * 4));
    }
}
