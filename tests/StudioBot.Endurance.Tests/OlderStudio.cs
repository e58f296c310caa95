using System.Diagnostics;
using StudioBot.Host.Tests.Support;
using StudioBot.Records;

namespace StudioBot.Endurance.Tests;

/// <summary>A file of the first version, brought up to date by a service that is killed on the way.</summary>
internal sealed class OlderStudio : IDisposable
{
    private static readonly string First = Path.Combine(AppContext.BaseDirectory, "Golden", "0001_sample.db");

    private readonly TempFolder home = new();
    private readonly Random random;
    private readonly List<string> whole;
    private readonly long wholeLog;

    /// <summary>Brings one up to date in peace, to know how that looks.</summary>
    public OlderStudio(int seed)
    {
        random = new Random(seed);
        var path = Copied("in peace");
        using (var file = StudioFile.Open(path))
        {
            wholeLog = new FileInfo(path + "-wal").Length;
        }

        whole = Rows(path);
    }

    /// <summary>Starts a service on one, kills it when so much of the log is written, and opens the file again.</summary>
    /// <returns>How many steps stood when it was killed.</returns>
    public async Task<long> Die(int kill)
    {
        var folder = $"killed {kill}";
        var path = Copied(folder);
        var (log, most) = (new FileInfo(path + "-wal"), random.NextInt64(wholeLog));

        // Nobody is at the other end: it never comes to be ready.
        using var service = BuiltProgram.Start(
            PublishedProgram.Path,
            home,
            ["serve", "--data", Path.GetDirectoryName(path)!],
            ("Telegram__Token", StandIn.Token),
            ("Telegram__ApiUrl", "http://127.0.0.1:9"));
        service.StandardInput.Close();
        _ = service.StandardOutput.ReadToEndAsync();
        var said = service.StandardError.ReadToEndAsync();
        var began = Stopwatch.GetTimestamp();
        while (!log.Exists || log.Length <= most)
        {
            Assert.True(Stopwatch.GetElapsedTime(began) < TimeSpan.FromMinutes(1), "It was not brought up to date.");
            Assert.False(service.HasExited, "It came to its end.");
            log.Refresh();
        }

        service.Kill();
        await service.WaitForExitAsync();
        await said;
        long steps;
        using (var raw = new RawStudio(path))
        {
            steps = raw.One<long>("pragma user_version");
            Assert.Equal("ok", raw.One<string>("pragma integrity_check"));
        }

        StudioFile.Open(path).Dispose();
        Assert.Equal(whole, Rows(path));
        return steps;
    }

    public void Dispose() => home.Dispose();

    private string Copied(string folder)
    {
        var path = Path.Combine(home.Path, folder, "studio.db");
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.Copy(First, path);
        return path;
    }

    private static List<string> Rows(string path)
    {
        using var raw = new RawStudio(path);
        var tables = raw.All("select name from sqlite_schema where type = 'table' order by name");
        return
        [
            .. raw.All("select sql from sqlite_schema where sql is not null order by name"),
            .. tables.Where(table => table != "setting").SelectMany(table => raw.All($"select * from {table} order by 1, 2").Select(row => $"{table}: {row}")),
        ];
    }
}
