using System.Globalization;
using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Records.Materials;
using StudioBot.Records.Schema;
using StudioBot.Records.Stock;
using static StudioBot.Records.Tests.Saying;

namespace StudioBot.Records.Tests.Schema;

/// <summary>What the fourth step makes of books that knew no worth. Sums are worked by hand.</summary>
public sealed class WorthStepTests : IDisposable
{
    private const int Before = 3;

    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("worth-");

    private string Path => System.IO.Path.Combine(folder.FullName, "old.db");

    public void Dispose() => folder.Delete(recursive: true);

    // 1 L at 10.01: 300 ml used, 100 of them taken back, so 800 ml are worth 8.008, half up 8.01.
    [Fact]
    public void Lines_from_before_are_valued_by_the_price_of_their_lot()
    {
        using (var connection = Old())
        {
            connection.Execute("""
                insert into member (id, name, role, joined_at) values (1, 'Mira', 'steward', 0);
                insert into material (id, name, form) values (1, 'white', 'liquid'), (2, 'ochre', 'liquid');
                insert into act (id, kind, author_id, words, happened_at, written_at, undoes_id)
                values (1, 'bought', 1, 'bought', 0, 0, null), (2, 'used', 1, 'used', 0, 0, null),
                       (3, 'used', 1, 'used', 0, 0, null), (4, 'undo', 1, 'undo', 0, 0, 3);
                insert into lot (id, material_id, bought_at, price_cents, bought_microlitres, act_id)
                values (1, 1, 0, 1001, 1000000, 1), (2, 2, 0, null, 500000, 1);
                insert into stock_entry (act_id, material_id, lot_id, microlitres, reason, undoes_id)
                values (1, 1, 1, 1000000, 'bought', null), (1, 2, 2, 500000, 'bought', null),
                       (2, 1, 1, -200000, 'used', null), (3, 1, 1, -100000, 'used', null),
                       (4, 1, 1, 100000, 'used', 4);
                insert into money_entry (act_id, account, member_id, cents)
                values (1, 'member', 1, 1001), (1, 'studio', null, -1001);
                """);
        }

        using var file = StudioFile.Open(Path);
        var lots = file.Read(view => view.Lots.All());
        Assert.Equal([(800.0, 801L), (500.0, 0L)], lots.Select(lot => (Millilitres(lot.Left), lot.Worth.Cents)));
        Assert.Equal(
            [1001, 0, -200, -100, 100],
            file.Read(view => view.Stock.Entries()).Select(line => line.Fills ? line.Worth.Cents : -line.Worth.Cents));
        Assert.Equal([1001, -1001], file.Read(view => view.Money.Balances()).Select(line => line.Sum.Cents));

        // All that is left takes all that is left of the price.
        var taken = file.Write(session =>
        {
            var act = session.Said("used", session.Members.All()[0]);
            session.Stock.Draw(session.Materials.All()[0], Ml(800), StockReason.Used, act);
            return session.Stock.Of(act).Single().Worth.Cents;
        });
        Assert.Equal(801, taken);
    }

    private static double Millilitres(Amount amount) => ((Amount.ByVolume)amount).Volume.Millilitres;

    // As a program of the third step left it.
    private SqliteConnection Old()
    {
        var connection = new SqliteConnection($"Data Source={Path};Pooling=False");
        connection.Open();
        var assembly = typeof(SchemaSteps).Assembly;
        foreach (var script in assembly.GetManifestResourceNames()
            .Where(name => name.EndsWith(".sql", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal)
            .Take(Before))
        {
            using var reader = new StreamReader(assembly.GetManifestResourceStream(script)!);
            connection.Execute(reader.ReadToEnd());
        }

        connection.Execute(string.Create(CultureInfo.InvariantCulture, $"pragma user_version = {Before}"));
        return connection;
    }
}
