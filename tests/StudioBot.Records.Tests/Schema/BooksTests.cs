using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Craft.Costs;
using StudioBot.Craft.Units;
using StudioBot.Records.Ledger;
using StudioBot.Records.Pieces;
using StudioBot.Records.Sample;

namespace StudioBot.Records.Tests.Schema;

/// <summary>What the file itself forbids, whoever writes to it.</summary>
public sealed class BooksTests : IDisposable
{
    private const int Constraint = 19;   // SQLITE_CONSTRAINT, from memory

    private const string Stock = "insert into stock_entry (act_id, material_id, lot_id, ";
    private const string Undo = "insert into act (kind, words, happened_at, written_at, undoes_id) values ('undo', ";

    private readonly TemporaryStudio studio = new();

    public BooksTests() => studio.File.Write(session =>
    {
        SampleStudio.WriteInto(session);
        var act = session.Said("coat", session.Members.All()[0]);
        session.Pieces.Book(14, new PieceEvent.Coated(
            new Coat(Volume.FromMillilitres(120), Volume.FromMillilitres(60)) { LotIds = [16] }), act);
        session.Money.Book(act, [
            new MoneyLine(new Account.OfKitty(), new Money(5)), new MoneyLine(new Account.OfStudio(), new Money(-5))]);
    });

    public void Dispose() => studio.Dispose();

    [Theory]
    [InlineData("act", "words = 'other'")]
    [InlineData("stock_entry", "microlitres = 1")]
    [InlineData("money_entry", "cents = 1")]
    [InlineData("piece_event", "stage = 'ready'")]
    [InlineData("coat", "a_microlitres = 1")]
    [InlineData("coat_lot", "lot_id = 1")]
    public void A_book_is_only_appended(string book, string change)
    {
        Assert.NotEqual(0L, Rows(book));

        Assert.Equal(Constraint, Refused($"update {book} set {change}"));
        Assert.Equal(Constraint, Refused($"delete from {book}"));
    }

    [Theory]
    [InlineData(Stock + "microlitres, reason) values (1, 1, 1, 0, 'used')")]
    [InlineData(Stock + "microlitres, milligrams, reason) values (1, 1, 1, 1, 1, 'used')")]
    [InlineData(Stock + "microlitres, reason) values (1, 2, 1, 1, 'used')")]
    [InlineData(Stock + "microlitres, reason) values (1, 1, 1, -40001, 'used')")]
    [InlineData(Stock + "microlitres, reason) values (99, 1, 1, 1, 'used')")]
    [InlineData("insert into money_entry (act_id, account, cents) values (1, 'member', 1)")]
    [InlineData("insert into money_entry (act_id, account, member_id, cents) values (1, 'kitty', 1, 1)")]
    [InlineData("insert into piece_event (act_id, piece_id, kind) values (1, 17, 'weighed')")]
    [InlineData("insert into piece_event (act_id, piece_id, kind) values (1, 17, 'undone')")]
    [InlineData("insert into act (kind, words, happened_at, written_at) values ('undo', 'undo', 0, 0)")]
    public void The_file_refuses(string line)
    {
        Assert.Equal(Constraint, Refused(line));
    }

    [Fact]
    public void An_act_is_taken_back_once_and_an_undo_never()
    {
        var act = studio.File.Write(session => session.Said("used", session.Members.All()[0]));
        studio.File.Write(session => session.TakeBack(act));

        Assert.Equal(Constraint, Refused($"{Undo}'x', 0, 0, {act.Id})"));
        Assert.Equal(Constraint, Refused($"{Undo}'x', 0, 0, {act.Id + 1})"));
    }

    private long Rows(string book)
    {
        using var connection = Raw();
        return connection.ExecuteScalar<long>($"select count(*) from {book}");
    }

    private int Refused(string statement)
    {
        using var connection = Raw();
        connection.Open();
        connection.Execute("pragma foreign_keys = on");
        return Assert.Throws<SqliteException>(() => connection.Execute(statement)).SqliteErrorCode;
    }

    private SqliteConnection Raw() => new($"Data Source={studio.Path};Pooling=False");
}
