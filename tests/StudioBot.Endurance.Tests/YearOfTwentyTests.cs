using System.Collections.Concurrent;
using Microsoft.Data.Sqlite;
using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Host.Tests.Support;
using StudioBot.Records;
using Xunit.Abstractions;

namespace StudioBot.Endurance.Tests;

/// <summary>
/// A year of twenty is typed, and typed once more into another file; a quarter of it, unless <c>STUDIOBOT_DAYS</c> says 365.
/// <c>STUDIOBOT_SEED</c> repeats a run.
/// </summary>
public sealed class YearOfTwentyTests(ITestOutputHelper output)
{
    private const int Quarter = 91;
    private const int FewestInAYear = 80_000;

    [Fact]
    public async Task A_year_of_twenty_adds_up_is_told_again_alike_and_buys_no_worse_than_at_a_fixed_limit()
    {
        var (seed, count) = (Printed.Setting("STUDIOBOT_SEED", 20261126), Printed.Setting("STUDIOBOT_DAYS", Quarter));
        using var folder = new TempFolder();
        var (first, again) = (Path.Combine(folder.Path, "first.db"), Path.Combine(folder.Path, "again.db"));
        using var days = new BlockingCollection<IReadOnlyList<SaidLine>>();
        var telling = Task.Run(() => TellAgain(again, days));
        using (var year = new YearOfTwenty(first, seed))
        {
            try
            {
                for (var day = 0; day < count; day++)
                {
                    days.Add(year.Live(day));
                }
            }
            finally
            {
                days.CompleteAdding();
            }

            year.Read(AddsUp);
            output.Print($"year: seed {seed}, {count} days, {year.Told.Said} messages, {year.Told.Recorded} recorded");
            output.Print($"year: {Lines(first)} lines of stock, {year.Pings} pings");
            output.Print($"year: by the book, {year.ByBook.StockOuts} days without a paint, {year.ByBook.Worth / count:0} on the shelf");
            output.Print($"year: by a limit,  {year.ByLimit.StockOuts} days without a paint, {year.ByLimit.Worth / count:0} on the shelf");
            Assert.True(count < YearOfTwenty.Days || Lines(first) >= FewestInAYear);
            Assert.True(year.ByBook.StockOuts <= year.ByLimit.StockOuts || year.ByBook.Worth <= year.ByLimit.Worth);
        }

        await telling;
        Assert.Equal(Books(first), Books(again));
    }

    private static void TellAgain(string path, BlockingCollection<IReadOnlyList<SaidLine>> days)
    {
        using var file = YearOfTwenty.Founded(path);
        Vocabulary? words = null;
        foreach (var day in days.GetConsumingEnumerable())
        {
            file.Write(session =>
            {
                foreach (var line in day)
                {
                    if (line.Words.Length == 0)
                    {
                        YearOfTwenty.Look(line.At, session);
                    }
                    else
                    {
                        YearOfTwenty.Say(line, session, ref words);
                    }
                }
            });
        }
    }

    private static bool AddsUp(StudioView view)
    {
        var entries = view.Stock.Entries().ToLookup(line => line.MaterialId);
        foreach (var level in view.Materials.Levels())
        {
            var sum = entries[level.MaterialId].Sum(line => line.Fills ? Need.UnitsOf(line.Amount) : -Need.UnitsOf(line.Amount));
            Assert.Equal(sum, Need.UnitsOf(level.Left) + Need.UnitsOf(level.Stopped), 6);
        }

        Assert.Equal(0, view.Money.Balances().Sum(balance => balance.Sum.Cents));
        Assert.Equal(
            view.Money.Entries().GroupBy(entry => entry.Account).ToDictionary(same => same.Key, same => same.Sum(entry => entry.Sum.Cents))
                .Where(account => account.Value != 0).OrderBy(account => account.Key.ToString()),
            view.Money.Balances().ToDictionary(one => one.Account, one => one.Sum.Cents)
                .Where(account => account.Value != 0).OrderBy(account => account.Key.ToString()));
        return true;
    }

    private static long Lines(string path) => Query(path, "select count(*) from stock_entry", row => row.GetInt64(0)).Single();

    // Every table of a file, row by row.
    private static List<string> Books(string path) =>
    [
        .. Query(path, "select name from sqlite_schema where type = 'table' order by name", row => row.GetString(0)).SelectMany(table =>
            Query(path, $"select * from \"{table}\"", row => $"{table}: {string.Join('|', Enumerable.Range(0, row.FieldCount).Select(row.GetValue))}")),
    ];

    private static List<T> Query<T>(string path, string text, Func<SqliteDataReader, T> read)
    {
        using var books = new SqliteConnection(
            new SqliteConnectionStringBuilder { DataSource = path, Mode = SqliteOpenMode.ReadOnly, Pooling = false }.ToString());
        books.Open();
        using var command = books.CreateCommand();
        command.CommandText = text;
        using var row = command.ExecuteReader();
        List<T> rows = [];
        while (row.Read())
        {
            rows.Add(read(row));
        }

        return rows;
    }
}
