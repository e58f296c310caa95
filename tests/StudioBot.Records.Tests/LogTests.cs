using System.Diagnostics;
using Dapper;

namespace StudioBot.Records.Tests;

/// <summary>The log beside the file stays short, whoever has looked at it meanwhile.</summary>
public sealed class LogTests : IDisposable
{
    private const string Acts = "select count(*) from act";
    private const int Many = 300;

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("studio-");
    private readonly StudioFile file;

    public LogTests() => file = StudioFile.Open(Path);

    private string Path => System.IO.Path.Combine(folder.FullName, "studio.db");

    private long Log => new FileInfo(Path + "-wal").Length;

    public void Dispose()
    {
        file.Dispose();
        folder.Delete(recursive: true);
    }

    [Fact]
    public void A_short_log_is_left_as_it_is()
    {
        Write(1);
        var before = Log;
        Assert.InRange(before, 1, StudioFile.SmallLog);

        Assert.True(file.ShortenLog());
        Assert.Equal(before, Log);
    }

    [Fact]
    public void A_long_one_is_emptied_and_what_it_held_stands_in_the_file()
    {
        Write(Many);
        Assert.True(Log > StudioFile.SmallLog);

        Assert.True(file.ShortenLog());
        Assert.Equal(0, Log);
        Assert.Equal(Many, Connections.Reader(Path).ExecuteScalar<long>(Acts));
    }

    [Fact]
    public void While_somebody_reads_from_it_it_stays_and_nobody_waits()
    {
        using var reader = Connections.Reader(Path);
        using (var look = reader.BeginTransaction(deferred: true))
        {
            Assert.Equal(0, reader.ExecuteScalar<long>(Acts, transaction: look));
            Write(Many);
            var began = Stopwatch.GetTimestamp();
            Assert.False(file.ShortenLog());
            Assert.True(Stopwatch.GetElapsedTime(began) < TimeSpan.FromSeconds(4), "It waited.");
        }

        Assert.True(file.ShortenLog());
        Assert.Equal(0, Log);
    }

    [Fact]
    public void A_studio_in_memory_has_none()
    {
        using var memory = StudioFile.OpenInMemory();
        Assert.True(memory.ShortenLog());
    }

    private void Write(int acts)
    {
        for (var act = 0; act < acts; act++)
        {
            _ = file.Write(session => session.Said("used"));
        }
    }
}
