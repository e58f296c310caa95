using System.Diagnostics;
using System.Globalization;

namespace StudioBot.Benchmarks;

/// <summary>A disk whose flushes are counted and take longer: a library that is preloaded into the bot.</summary>
/// <param name="library">The library.</param>
/// <param name="longer">How much longer each flush takes.</param>
internal sealed class SlowDisk(string library, TimeSpan longer)
{
    /// <summary>Builds the library with the machine's C compiler; none where there is no compiler.</summary>
    public static string? Build()
    {
        var library = Path.Combine(AppContext.BaseDirectory, "slow_flush.so");
        try
        {
            using var compiler = Process.Start(
                "cc", ["-O2", "-shared", "-fPIC", "-o", library, Path.Combine(AppContext.BaseDirectory, "slow_flush.c"), "-ldl"]);
            compiler.WaitForExit();
            return compiler.ExitCode == 0 ? library : null;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return null;
        }
    }

    /// <summary>A file that a process counts its flushes in.</summary>
    public string NewCount()
    {
        var file = Path.Combine(Path.GetDirectoryName(library)!, $"flushes-{Guid.NewGuid():N}");
        File.WriteAllBytes(file, new byte[sizeof(long)]);
        return file;
    }

    /// <summary>What a process needs in its environment.</summary>
    public IEnumerable<(string Name, string Value)> Variables(string count) =>
    [
        ("LD_PRELOAD", library),
        ("FLUSH_COUNT", count),
        ("FLUSH_DELAY_US", longer.TotalMicroseconds.ToString("0", CultureInfo.InvariantCulture)),
    ];
}
