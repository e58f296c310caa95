using System.Diagnostics;
using System.Globalization;
using Microsoft.Data.Sqlite;
using StudioBot.Host.Tests.Support;
using StudioBot.Records;
using StudioBot.Records.Materials;
using Xunit.Abstractions;

namespace StudioBot.Host.Tests.Whole;

/// <summary>After a loss of power the log beside a studio may end anywhere: what is left is an unbroken beginning of what
/// was recorded, with all that belongs to it. A failure prints the seed, and STUDIOBOT_SEED takes it back.</summary>
public sealed class TornLogTests(ITestOutputHelper output) : IDisposable
{
    private const int Cuts = 500;
    private const int Records = 40;
    private const int Litres = 5;

    private readonly TempFolder torn = new();

    public void Dispose() => torn.Dispose();

    [Fact]
    public async Task A_log_cut_anywhere_leaves_an_unbroken_beginning()
    {
        var seed = int.TryParse(
            Environment.GetEnvironmentVariable("STUDIOBOT_SEED"), CultureInfo.InvariantCulture, out var given)
            ? given
            : Random.Shared.Next();
        var random = new Random(seed);
        using var desk = new Desk();
        await desk.Settle(desk.Message(1, Desk.Nora, 1, $"bought {Litres} x 1 L white 50.00"));
        for (var record = 0; record < Records; record++)
        {
            await desk.Settle(desk.Message(10 + record, record % 2 == 0 ? Desk.Nora : Desk.Pia, 10 + record, Words(record)));
        }

        var (main, log) = (Shared(desk.Path), Shared(desk.Path + "-wal"));
        Assert.True(log.Length > 100_000, "Nothing is in the log.");
        var lengths = new SortedSet<int>();
        var began = Stopwatch.GetTimestamp();
        for (var cut = 0; cut < Cuts; cut++)
        {
            var at = random.Next(log.Length + 1);
            File.WriteAllBytes(torn.StudioPath, main);
            await using (var stream = File.Create(torn.StudioPath + "-wal"))
            {
                stream.Write(log.AsSpan(0, at));
            }

            lengths.Add(Opened($"seed {seed}, cut at {at} of {log.Length}"));
        }

        output.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"torn log: seed {seed}, {Cuts} cuts, all opened, {lengths.Count} different beginnings, "
            + $"{Stopwatch.GetElapsedTime(began).TotalSeconds:0.0} s"));
        Assert.InRange(lengths.Count, Records / 4, Records + 1);
    }

    // How many of the records it holds.
    private int Opened(string how)
    {
        using var file = StudioFile.Open(torn.StudioPath);
        Assert.True("ok" == Integrity(), how);
        var used = file.Read(view => view.Acts.These(Enumerable.Range(1, 10 * Records).Select(id => (long)id)))
            .Where(act => act.Kind == "used").Select(act => act.Words).ToList();
        Assert.True(used.SequenceEqual(Enumerable.Range(0, used.Count).Select(Words)), how);
        var white = file.Read(view => view.Materials.All()).FirstOrDefault(material => material.Name == "white");
        if (white is not null && used.Count > 0)
        {
            var left = Assert.IsType<Amount.ByVolume>(
                file.Read(view => view.Materials.Levels().First(level => level.MaterialId == white.Id).Left));
            Assert.Equal((Litres * 1000) - Enumerable.Range(0, used.Count).Sum(Millilitres), left.Volume.Millilitres, 3);
        }

        Assert.Equal(0, file.Read(view => view.Money.Balances()).Sum(line => line.Sum.Cents));
        return used.Count;
    }

    private string Integrity()
    {
        using var connection = new SqliteConnection($"Data Source={torn.StudioPath};Pooling=False");
        connection.Open();
        using var check = connection.CreateCommand();
        check.CommandText = "pragma integrity_check";
        return (string)check.ExecuteScalar()!;
    }

    private static byte[] Shared(string path)
    {
        using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }

    private static int Millilitres(int record) => 31 + record;

    private static string Words(int record) => $"used {Millilitres(record)} ml white";
}
