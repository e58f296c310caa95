using System.Diagnostics;
using System.Globalization;

namespace StudioBot.Benchmarks;

/// <summary>A bot in a process of its own, whose time, memory and flushes can be read.</summary>
internal sealed class Child : IAsyncDisposable
{
    // What the system counts processor time in, a second.
    private const double TicksASecond = 100;

    private readonly Process process;
    private readonly string? flushes;

    private Child(Process process, string? flushes)
    {
        (this.process, this.flushes) = (process, flushes);
        _ = process.StandardOutput.ReadToEndAsync();
        Trouble = process.StandardError.ReadToEndAsync();
    }

    /// <summary>What it complained of, once it has ended.</summary>
    public Task<string> Trouble { get; }

    /// <summary>Processor time since it began, in milliseconds.</summary>
    public double Cpu
    {
        get
        {
            // After the name in parentheses: state is the first, user and system time are the 12th and 13th.
            var stat = File.ReadAllText($"/proc/{process.Id}/stat");
            var fields = stat[(stat.LastIndexOf(')') + 2)..].Split(' ');
            return (long.Parse(fields[11], CultureInfo.InvariantCulture) + long.Parse(fields[12], CultureInfo.InvariantCulture))
                * 1000 / TicksASecond;
        }
    }

    /// <summary>How often it had the disk flushed.</summary>
    public long Flushes => flushes is null ? 0 : BitConverter.ToInt64(File.ReadAllBytes(flushes));

    /// <summary>What it holds of the machine's memory, and what of that is its own, in MiB.</summary>
    public (double Resident, double Own) Memory
    {
        get
        {
            double Sum(string file, params string[] names) => File.ReadLines($"/proc/{process.Id}/{file}")
                .Where(line => names.Any(name => line.StartsWith(name + ":", StringComparison.Ordinal)))
                .Sum(line => double.Parse(line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[1], CultureInfo.InvariantCulture)) / 1024;
            return (Sum("status", "VmRSS"), Sum("smaps_rollup", "Private_Dirty"));
        }
    }

    /// <summary>Starts one of this program's own bots.</summary>
    public static Child Own(SlowDisk? disk, params IEnumerable<string> arguments) => Start(
        disk, [], [Path.Combine(AppContext.BaseDirectory, "StudioBot.Benchmarks.dll"), .. arguments]);

    /// <summary>Starts a program for this runtime.</summary>
    public static Child Start(
        SlowDisk? disk, IEnumerable<(string Name, string Value)> variables, IEnumerable<string> arguments) =>
        Started(disk, variables, new ProcessStartInfo("dotnet", arguments));

    /// <summary>Starts a program that brings its runtime.</summary>
    public static Child StartOwnRuntime(
        string program, IEnumerable<(string Name, string Value)> variables, params IEnumerable<string> arguments) =>
        Started(null, variables, new ProcessStartInfo(program, arguments));

    /// <summary>Ends it as the system would.</summary>
    public async Task<int> End()
    {
        using var signal = Process.Start("kill", ["-TERM", process.Id.ToString(CultureInfo.InvariantCulture)]);
        using var enough = new CancellationTokenSource(TimeSpan.FromSeconds(30));
        await process.WaitForExitAsync(enough.Token);
        return process.ExitCode;
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (!process.HasExited)
        {
            process.Kill();
            await process.WaitForExitAsync();
        }

        process.Dispose();
        if (flushes is not null)
        {
            File.Delete(flushes);
        }
    }

    private static Child Started(
        SlowDisk? disk, IEnumerable<(string Name, string Value)> variables, ProcessStartInfo how)
    {
        how.RedirectStandardOutput = true;
        how.RedirectStandardError = true;
        var count = disk?.NewCount();
        foreach (var (name, value) in variables.Concat(disk?.Variables(count!) ?? []))
        {
            how.Environment[name] = value;
        }

        return new Child(Process.Start(how)!, count);
    }
}
