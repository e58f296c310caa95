using System.Globalization;
using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Records.Backups;
using StudioBot.Records.Sample;
using Xunit.Abstractions;

namespace StudioBot.Records.Tests.Whole;

/// <summary>Three hundred ways to damage a finished file, each by its own seed; STUDIOBOT_SEED moves them all.</summary>
public sealed class DamageTests(ITestOutputHelper output) : IDisposable
{
    private const int Seeds = 300;
    private const int Page = 4096;
    private const string Noise = "a page of noise";
    private const string Nothing = "a page of nothing";

    // Whole in itself, and in the wrong place: without a manifest that is found where something refers to its rows.
    private const string Displaced = "a page written over another";

    private static readonly int First =
        int.TryParse(Environment.GetEnvironmentVariable("STUDIOBOT_SEED"), CultureInfo.InvariantCulture, out var seed) ? seed : 20261126;

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("damage-");

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public void What_breaks_the_structure_is_found_by_the_nightly_look_other_counts_by_the_manifest_and_all_by_the_sum()
    {
        var whole = Finished();
        var bytes = File.ReadAllBytes(whole);
        var (counts, sum) = (Counts(whole)!, Proof.Sum(whole));
        List<(string How, bool IsStructure, bool BySum, bool ByLook, bool ByQuickLook)> all = [];
        for (var seed = First; seed < First + Seeds; seed++)
        {
            var (how, harmed) = Harmed(bytes, new Random(seed));
            var file = Path.Combine(folder.FullName, "harmed.db");
            File.WriteAllBytes(file, harmed);
            var found = Counts(file);
            var isStructure = found is null || how is Noise or Nothing;
            var one = (how, isStructure, Proof.Sum(file) != sum, Proof.OfCopy(file, rows: null).Count > 0, QuickLook(file));
            Assert.True(!isStructure || one.Item4, $"Seed {seed}, {how}: not found.");
            Assert.True(
                found is null || found.SequenceEqual(counts) || Proof.OfCopy(file, counts.ToDictionary()).Count > 0,
                $"Seed {seed}, {how}: other counts, not found.");
            all.Add(one);
        }

        Assert.All(all, one => Assert.True(one.BySum));
        foreach (var how in all.GroupBy(one => one.How))
        {
            var line = string.Create(
                CultureInfo.InvariantCulture,
                $"{how.Key}: {how.Count()}, {how.Count(one => one.IsStructure)} of structure; found by SHA-256 {Share(how, one => one.BySum)}, "
                    + $"by the nightly look {Share(how, one => one.ByLook)}, by the quick look {Share(how, one => one.ByQuickLook)}");
            output.WriteLine(line);
            Console.WriteLine($"{line} (seeds from {First})");
        }
    }

    // Without a page that is free: whatever is changed belongs to something.
    private string Finished()
    {
        var path = Path.Combine(folder.FullName, "whole.db");
        using (var file = StudioFile.Open(path))
        {
            file.Write(SampleStudio.WriteInto);
            file.Write(session =>
            {
                for (var step = 0; step < 40; step++)
                {
                    HistoriesTests.Live(session, (step % 12, step * 37 % 1000, step * 91 % 1000));
                }
            });
        }

        using var raw = Dump.Raw(path);
        raw.Execute("pragma journal_mode = delete");
        raw.Execute("vacuum");
        Assert.Equal(0, raw.ExecuteScalar<long>("pragma freelist_count"));
        return path;
    }

    private static (string How, byte[] Bytes) Harmed(byte[] whole, Random random)
    {
        var bytes = whole.ToArray();
        var pages = bytes.Length / Page;
        var (one, other) = (random.Next(1, pages), random.Next(1, pages));
        switch (random.Next(5))
        {
            case 0:
                random.NextBytes(bytes.AsSpan(one * Page, Page));
                return (Noise, bytes);
            case 1 when whole.AsSpan(one * Page, Page).ContainsAnyExcept((byte)0):
                bytes.AsSpan(one * Page, Page).Clear();
                return (Nothing, bytes);
            case 2 when HoldsCells(whole, one) && !whole.AsSpan(one * Page, Page).SequenceEqual(whole.AsSpan(other * Page, Page)):
                whole.AsSpan(one * Page, Page).CopyTo(bytes.AsSpan(other * Page));
                return (Displaced, bytes);
            default:
                bytes[random.Next(bytes.Length)] ^= (byte)(1 << random.Next(8));
                return ("a bit", bytes);
        }
    }

    // Two trees that hold nothing may change places without any change; their count of cells stands at the fourth byte.
    private static bool HoldsCells(byte[] whole, int page) => whole[page * Page + 3] > 0 || whole[page * Page + 4] > 0;

    // How many rows each table holds; none where it can't be read to its end.
    private static SortedDictionary<string, long>? Counts(string file)
    {
        try
        {
            return new(Dump.RowsOf(file)
                .Where(table => !table.Key.StartsWith("sqlite_", StringComparison.Ordinal))
                .ToDictionary(table => table.Key, table => (long)table.Value.Count));
        }
        catch (SqliteException)
        {
            return null;
        }
    }

    private static bool QuickLook(string file)
    {
        try
        {
            using var raw = Dump.Raw(file);
            return raw.ExecuteScalar<string>("pragma quick_check(1)") != "ok";
        }
        catch (SqliteException)
        {
            return true;
        }
    }

    private static string Share<T>(IEnumerable<T> all, Func<T, bool> holds) =>
        string.Create(CultureInfo.InvariantCulture, $"{100.0 * all.Count(holds) / all.Count():0.#} %");
}
