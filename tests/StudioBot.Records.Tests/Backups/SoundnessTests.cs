using Dapper;
using StudioBot.Craft.Costs;
using StudioBot.Records.Backups;
using StudioBot.Records.Ledger;
using StudioBot.Records.Sample;
using StudioBot.Records.Schema;

namespace StudioBot.Records.Tests.Backups;

public sealed class SoundnessTests : IDisposable
{
    private readonly TemporaryStudio studio = new();

    public SoundnessTests()
    {
        studio.File.Write(SampleStudio.WriteInto);
        studio.File.Write(session =>
        {
            var act = session.Said("paid", session.Members.All()[0]);
            session.Money.Book(act, [
                new MoneyLine(new Account.OfKitty(), new Money(500)),
                new MoneyLine(new Account.OfMember(1), new Money(-500))]);
        });
        studio.File.Dispose();
    }

    public void Dispose() => studio.Dispose();

    [Fact]
    public void A_studio_as_it_was_written_is_sound() => Assert.Empty(Found(""));

    [Theory]
    [InlineData("update lot_sum set units = units + 1 where lot_id = 2", "1 lots are not the sum of their lines.")]
    [InlineData("update lot_sum set cents = cents - 1 where lot_id > 23", "3 lots are not the sum of their lines.")]
    [InlineData("delete from lot_sum where lot_id = 3", "1 lots are not the sum of their lines.")]
    [InlineData("update money_sum set cents = cents + 1 where account = 'kitty'", "1 balances are not the sum of their lines.")]
    [InlineData("delete from money_sum", "2 balances are not the sum of their lines.")]
    [InlineData("insert into money_entry (act_id, account, cents) values (1, 'kitty', 7)", "1 acts of the money's book do not add up to zero.")]
    [InlineData("update piece_stand set stage = 'bin' where piece_id = 1", "1 pieces do not stand where their lines leave them.")]
    [InlineData("delete from piece_stand where piece_id = 2", "1 pieces do not stand where their lines leave them.")]
    [InlineData("update piece set maker_id = 77 where id = 1", "Lines refer to what is not there.")]
    [InlineData("pragma ignore_check_constraints = on; update lot_sum set lot_id = 99 where lot_id = 2", "Lines refer to what is not there.")]
    [InlineData("pragma ignore_check_constraints = on; update piece set width_micrometres = -1 where id = 3", "CHECK constraint failed in piece")]
    [InlineData("create table other (id integer)", "The schema is not that of version 10.")]
    [InlineData("create trigger leak after insert on act begin select 1; end", "The schema is not that of version 10.")]
    [InlineData("drop index act_author", "The schema is not that of version 10.")]
    [InlineData("drop trigger act_does_not_go", "The schema is not that of version 10.")]
    [InlineData("analyze", "The schema is not that of version 10.")]
    [InlineData("pragma user_version = 5", "The schema is not that of version 5.")]
    [InlineData("pragma user_version = 99", "Version 99 of the schema is unknown here.")]
    [InlineData("pragma user_version = 0", "Version 0 of the schema is unknown here.")]
    public void What_is_off_is_found(string done, string found) => Assert.Equal(found, Found(done)[0]);

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    public void The_schema_of_every_version_is_known_by_its_text(int version)
    {
        var path = studio.Path + version;
        using (var fresh = Dump.Raw(path))
        {
            SchemaSteps.Apply(fresh, version);
            Assert.Equal(SchemaShape.Of(version), SchemaShape.Of(fresh));
        }

        Assert.Equal(SchemaSteps.Newest, Enumerable.Range(1, SchemaSteps.Newest).Select(SchemaShape.Of).Distinct().Count());
        Assert.Empty(Proof.OfCopy(path, rows: null));
    }

    private IReadOnlyList<string> Found(string done)
    {
        using (var raw = Dump.Raw(studio.Path))
        {
            raw.Execute("pragma foreign_keys = off");
            raw.Execute("pragma journal_mode = delete; " + done);
        }

        return Proof.OfCopy(studio.Path, rows: null);
    }
}
