using StudioBot.Craft.Costs;
using StudioBot.Records.Acts;
using StudioBot.Records.Ledger;
using StudioBot.Records.Members;
using static StudioBot.Records.Tests.Saying;

namespace StudioBot.Records.Tests.Ledger;

public sealed class AccountRecordsTests : TwoMembers
{
    [Fact]
    public void An_account_is_listed_from_its_last_line_and_an_undo_says_what_it_takes_back()
    {
        Used(Pia, 120, 0, "used 20 ml white");
        var second = Used(Pia, 45, 1, "used 5 g blue");
        Used(Mira, 999, 2, "used 1 L white");
        Studio.File.Write(session => Assert.IsType<Undone.Done>(session.TakeBack(second, Mira)));

        var lines = Studio.File.Read(view => view.Accounts.Newest(Pia.Id, 10));

        Assert.Equal([45, -45, -120], lines.Select(line => line.Sum.Cents));
        Assert.Equal(["used 5 g blue", "used 5 g blue", "used 20 ml white"], lines.Select(line => line.Words));
        Assert.Equal([true, false, false], lines.Select(line => line.IsUndo));
        Assert.All(lines, line => Assert.Equal((Pia.Id, "used"), (line.WhoseId, line.Kind)));
        Assert.Equal(3, Studio.File.Read(view => view.Accounts.Count(Pia.Id)));
        Assert.Equal([45, -45], Studio.File.Read(view => view.Accounts.Newest(Pia.Id, 2)).Select(line => line.Sum.Cents));
    }

    [Fact]
    public void A_stretch_of_time_has_its_first_moment_and_not_the_one_behind_it()
    {
        Used(Pia, 120, 0, "used 20 ml white");
        Used(Pia, 45, 10, "used 5 g blue");
        Used(Mira, 10, 5, "used 2 cups");

        Assert.Equal([-120], Within(0, 10));
        Assert.Equal([-45, -120], Within(0, 10.1));
        Assert.Empty(Within(0.1, 10));
    }

    [Fact]
    public void The_kitty_is_an_account_of_its_own()
    {
        Studio.File.Write(session => session.Money.Book(session.Said("paid", Pia), [
            new MoneyLine(new Account.OfMember(Pia.Id), new Money(900)), new MoneyLine(new Account.OfKitty(), new Money(-900))]));

        Assert.Equal([-900], Studio.File.Read(view => view.Accounts.OfKitty(Morning, Morning.AddMinutes(1))).Select(line => line.Sum.Cents));
    }

    private IEnumerable<long> Within(double from, double until) => Studio.File.Read(view =>
        view.Accounts.Within(Pia.Id, Morning.AddMinutes(from), Morning.AddMinutes(until))).Select(line => line.Sum.Cents);

    private Act Used(Member member, long cents, double minute, string words) => Studio.File.Write(session =>
    {
        var act = session.Said("used", member, words, minute);
        session.Money.Book(act, [
            new MoneyLine(new Account.OfMember(member.Id), new Money(-cents)), new MoneyLine(new Account.OfStudio(), new Money(cents))]);
        return act;
    });
}
