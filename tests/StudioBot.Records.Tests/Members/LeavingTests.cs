using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Craft.Costs;
using StudioBot.Records.Acts;
using StudioBot.Records.Ledger;
using StudioBot.Records.Members;
using static StudioBot.Records.Tests.Saying;

namespace StudioBot.Records.Tests.Members;

/// <summary>New accounts, leaving and being forgotten.</summary>
public sealed class LeavingTests : IDisposable
{
    private readonly TemporaryStudio studio = new();
    private readonly Member mira;
    private readonly Member pia;

    public LeavingTests() => (mira, pia) = studio.File.Write(session =>
    {
        var (steward, member) = (
            session.Members.Add("Mira", Role.Steward, Morning), session.Members.Add("Pia", Role.Member, Morning));
        session.Members.AddAccount(7001, member.Id, Morning);
        return (steward, member);
    });

    public void Dispose() => studio.Dispose();

    [Fact]
    public void A_new_account_speaks_for_a_member_and_the_old_one_no_more()
    {
        var act = Did(session => session.Members.MoveAccount, pia.Id, 7002);
        Assert.Null(Speaks(7001));
        Assert.Equal(pia, Speaks(7002));

        Assert.IsType<Undone.Done>(Undo(act));

        Assert.Equal(pia, Speaks(7001));
        Assert.Null(Speaks(7002));
    }

    [Fact]
    public void An_account_that_speaks_for_another_by_now_does_not_come_back()
    {
        var act = Did(session => session.Members.MoveAccount, pia.Id, 7002);
        Did(session => session.Members.MoveAccount, mira.Id, 7001);

        Assert.IsType<Undone.RestsOn>(Undo(act));
        Assert.Equal((pia, mira), (Speaks(7002), Speaks(7001)));
    }

    [Fact]
    public void Who_has_left_is_known_by_their_account_and_can_return_as_who_they_were()
    {
        studio.File.Write(session => session.Members.Leave(pia.Id, session.Said("leave", pia)));
        Assert.Equal(pia, studio.File.Read(view => view.Members.Former(7001)));
        Assert.Null(studio.File.Read(view => view.Members.Former(7002)));

        var back = studio.File.Write(session =>
        {
            var join = session.Said("join", mira);
            session.Members.Return(pia with { Role = Role.Steward }, join);
            return join;
        });
        Assert.Equal(pia with { Role = Role.Steward }, Speaks(7001));
        Assert.Null(studio.File.Read(view => view.Members.Former(7001)));

        Assert.IsType<Undone.Done>(Undo(back));
        Assert.Equal(pia, studio.File.Read(view => view.Members.Former(7001)));
    }

    [Fact]
    public void Who_has_left_is_a_stranger_and_comes_back_with_undo()
    {
        var act = studio.File.Write(session =>
        {
            var leave = session.Said("leave", pia);
            session.Members.Leave(pia.Id, leave);
            return leave;
        });
        Assert.Null(Speaks(7001));

        Undo(act);
        Assert.Equal(pia, Speaks(7001));
    }

    [Fact]
    public void A_change_of_role_or_units_goes_back_without_touching_the_name_that_changed_since()
    {
        var role = Changed(pia with { Role = Role.Steward });
        Changed(pia with { Role = Role.Steward, Name = "Pia K" });

        Assert.IsType<Undone.Done>(Undo(role));
        Assert.Equal(pia with { Name = "Pia K" }, Speaks(7001));
    }

    [Fact]
    public void What_was_changed_again_since_stays_and_the_later_act_is_named()
    {
        var first = Changed(pia with { Name = "Pia K" });
        var second = Changed(pia with { Name = "Pia L" });

        Assert.Equal([second], Assert.IsType<Undone.RestsOn>(Undo(first)).Later);
        Assert.Equal("Pia L", Speaks(7001)?.Name);
    }

    [Fact]
    public void Forgetting_takes_the_name_out_while_the_sums_stay()
    {
        var renamed = Changed(pia with { Name = "Pia K" });
        var moved = Did(session => session.Members.MoveAccount, pia.Id, 7002);
        studio.File.Write(session => session.Money.Book(session.Said("paid", pia), [
            new MoneyLine(new Account.OfMember(pia.Id), new Money(900)),
            new MoneyLine(new Account.OfKitty(), new Money(-900))]));

        var name = studio.File.Write(session => session.Members.Forget(pia.Id, Morning));

        Assert.Equal($"former member {pia.Id}", name);
        Assert.Null(Speaks(7002));
        Assert.Equal(["Mira"], studio.File.Read(view => view.Members.All()).Select(member => member.Name));
        Assert.Equal(2, studio.File.Read(view => view.Money.Balances()).Count);
        Undo(renamed);
        Undo(moved);
        Assert.Equal(name, studio.File.Read(view => view.Acts.Recent(null, Morning))
            .Single(act => act.Kind == "paid").Author?.Name);
        Assert.Null(Speaks(7001));
        Assert.DoesNotContain(Rows(), row => row.Contains("Pia", StringComparison.Ordinal));
    }

    [Fact]
    public void Who_joined_by_an_act_and_wrote_since_is_not_undone()
    {
        var (join, used) = studio.File.Write(session =>
        {
            var act = session.Said("join");
            var tomas = session.Members.Add("Tomas", Role.Member, Morning, act: act);
            return (act, session.Said("used", tomas));
        });

        Assert.Equal([used], Assert.IsType<Undone.RestsOn>(Undo(join)).Later);
    }

    // Every text that the tables hold about members and about what acts kept of them.
    private List<string> Rows()
    {
        using var connection = new SqliteConnection($"Data Source={studio.Path};Pooling=False");
        return connection.Query<string>("""
            select name from member
            union all
            select coalesce(row_before, '') || coalesce(row_after, '') from setting_change
            """).AsList();
    }

    private Act Changed(Member member) => studio.File.Write(session =>
    {
        var act = session.Said("members", mira);
        session.Members.Change(member, act);
        return act;
    });

    private Act Did(Func<StudioSession, Action<long, long, Act>> what, long member, long user) =>
        studio.File.Write(session =>
        {
            var act = session.Said("members", mira);
            what(session)(member, user, act);
            return act;
        });

    private Undone Undo(Act act) => studio.File.Write(session => session.TakeBack(act, mira));

    private Member? Speaks(long user) => studio.File.Read(view => view.Members.ByAccount(user));
}
