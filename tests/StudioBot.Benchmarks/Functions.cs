using System.Diagnostics;
using System.Globalization;
using BenchmarkDotNet.Attributes;
using Microsoft.Data.Sqlite;
using StudioBot.Chat;
using StudioBot.Chat.Tests.Support;
using StudioBot.Chat.Tests.Whole;
using StudioBot.Host.Telegram;
using StudioBot.Records;
using StudioBot.Records.House;

namespace StudioBot.Benchmarks;

/// <summary>What a message takes, part by part; and what one look at a million reminders takes.</summary>
[MemoryDiagnoser]
public class Functions
{
    private const int Reminders = 1_000_000;
    private const int Runs = 41;

    private readonly string folder = Directory.CreateTempSubdirectory("studiobot-functions-").FullName;
    private StudioFile file = null!;
    private int told;

    /// <summary>Messages that are asked in private, as people type them.</summary>
    public static IEnumerable<string> Asked => ["ratio 3:1 250 ml", "resin 30x40 2mm", "stock white", "amounts 30cm panel bloom"];

    /// <summary>A studio of its own, whose reminders are a million.</summary>
    [GlobalSetup]
    public void Found() => file = WithAMillion(folder);

    /// <summary>Gone again.</summary>
    [GlobalCleanup]
    public void Leave()
    {
        file.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    /// <summary>From words to what they mean.</summary>
    [Benchmark]
    [ArgumentsSource(nameof(Asked))]
    public object Read(string words) => Sample.Listen(words);

    /// <summary>From words to the answer; a picture that comes with it is not drawn here.</summary>
    [Benchmark]
    [ArgumentsSource(nameof(Asked))]
    public object? Answer(string words) => Sample.Answer(words);

    /// <summary>From words to what goes out.</summary>
    [Benchmark]
    [ArgumentsSource(nameof(Asked))]
    public object Render(string words) => ReplyMarkup.Parts(Sample.Answer(words)!);

    /// <summary>A record of one row with its commit.</summary>
    [Benchmark]
    public void Write() => file.Write(session => session.Offset.Move(++told));

    /// <summary>When the next of a million reminders is due.</summary>
    [Benchmark]
    public object? NextDue() => file.Read(view => view.Reminders.NextDue());

    /// <summary>The median over all messages that are asked in private: microseconds and bytes to read and answer one.
    /// </summary>
    /// <param name="runs">How often each is measured, warm.</param>
    internal static (double Microseconds, long Bytes, int Messages) Asking(int runs = Runs)
    {
        List<(double Time, long Bytes)> all = [];
        foreach (var row in MessageRow.All.Where(row => row is { Kind: "ask", Chat: ChatKind.Private }))
        {
            Repeated(row.Text, runs * 10);
            all.Add(Repeated(row.Text, runs));
        }

        return (
            Middle(all.Select(one => one.Time)), (long)Middle(all.Select(one => (double)one.Bytes)), all.Count);
    }

    /// <summary>How long it takes to find the next of a million reminders, in milliseconds at the median.</summary>
    internal static double NextDueAtAMillion()
    {
        var place = Directory.CreateTempSubdirectory("studiobot-reminders-").FullName;
        var studio = WithAMillion(place);
        try
        {
            return Middle(Enumerable.Range(0, Runs).Select(_ =>
            {
                var began = Stopwatch.GetTimestamp();
                studio.Read(view => view.Reminders.NextDue());
                return Stopwatch.GetElapsedTime(began).TotalMilliseconds;
            }));
        }
        finally
        {
            studio.Dispose();
            Directory.Delete(place, recursive: true);
        }
    }

    private static (double Time, long Bytes) Repeated(string words, int times)
    {
        var (took, bytes) = (new double[times], new double[times]);
        for (var run = 0; run < times; run++)
        {
            var (began, before) = (Stopwatch.GetTimestamp(), GC.GetAllocatedBytesForCurrentThread());
            Sample.Answer(words);
            bytes[run] = GC.GetAllocatedBytesForCurrentThread() - before;
            took[run] = Stopwatch.GetElapsedTime(began).TotalMicroseconds;
        }

        return (Middle(took), (long)Middle(bytes));
    }

    private static double Middle(IEnumerable<double> values)
    {
        var sorted = values.Order().ToList();
        return sorted[sorted.Count / 2];
    }

    // Nine of ten were said, as after years.
    private static StudioFile WithAMillion(string folder)
    {
        var path = Path.Combine(folder, "studio.db");
        using (var studio = StudioFile.Open(path))
        {
            studio.Write(session => NewStudio.WriteInto(session, StudioService.Practice, "Europe/Vienna", StudioService.Now));
        }

        using (var raw = new SqliteConnection($"Data Source={path};Pooling=False"))
        {
            raw.Open();
            using var rows = raw.CreateCommand();
            rows.CommandText = string.Create(CultureInfo.InvariantCulture, $"""
                with recursive numbers (n) as (select 1 union all select n + 1 from numbers where n < {Reminders})
                insert into reminder (kind, subject, planned_at, due_at, occurrence_key, state, verdict, done_at)
                select 'Benchmark', 'Thing/' || n, 1795000000000 + n, 1795000000000 + n, 'Benchmark/' || n,
                    iif(n % 10, 'done', 'planned'), iif(n % 10, 'said', null), iif(n % 10, 1795000000000, null)
                from numbers
                """);
            rows.ExecuteNonQuery();
        }

        return StudioFile.Open(path);
    }
}
