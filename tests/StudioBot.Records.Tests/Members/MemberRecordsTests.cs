using Microsoft.Data.Sqlite;
using StudioBot.Craft.Units;
using StudioBot.Records.Members;

namespace StudioBot.Records.Tests.Members;

public sealed class MemberRecordsTests : IDisposable
{
    private static readonly DateTimeOffset Morning = new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero);

    private readonly StudioFile studio = StudioFile.OpenInMemory();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void A_member_speaks_through_each_of_their_accounts_and_a_stranger_is_nobody()
    {
        var mira = studio.Write(session => session.Members.Add("Mira", Role.Steward, Morning, UnitSystem.Us));
        studio.Write(session => session.Members.AddAccount(7001, mira.Id, Morning));
        studio.Write(session => session.Members.AddAccount(7009, mira.Id, Morning));

        Assert.Equal(
            new Member(mira.Id, "Mira", Role.Steward, UnitSystem.Us),
            studio.Read(view => view.Members.ByAccount(7001)));
        Assert.Equal(mira, studio.Read(view => view.Members.ByAccount(7009)));
        Assert.Null(studio.Read(view => view.Members.ByAccount(7002)));
    }

    [Fact]
    public void An_account_speaks_for_one_member_only()
    {
        var (mira, pia) = studio.Write(session => (
            session.Members.Add("Mira", Role.Steward, Morning), session.Members.Add("Pia", Role.Member, Morning)));
        studio.Write(session => session.Members.AddAccount(7001, mira.Id, Morning));

        Assert.Throws<SqliteException>(
            () => studio.Write(session => session.Members.AddAccount(7001, pia.Id, Morning)));
        Assert.Equal("Mira", studio.Read(view => view.Members.ByAccount(7001))!.Name);
    }

    [Fact]
    public void Who_has_left_is_still_known_by_name()
    {
        var (mira, pia) = studio.Write(session => (
            session.Members.Add("Mira", Role.Steward, Morning), session.Members.Add("Pia", Role.Member, Morning)));
        studio.Write(session => session.Members.Leave(pia.Id, session.Said("leave", pia)));

        var names = studio.Read(view => view.Members.Names());

        Assert.Equal((2, "Mira", "Pia"), (names.Count, names[mira.Id], names[pia.Id]));
        Assert.Equal([mira], studio.Read(view => view.Members.All()));
    }
}
