using Microsoft.Data.Sqlite;
using StudioBot.Craft.Costs;
using StudioBot.Records.Acts;
using StudioBot.Records.Ledger;
using StudioBot.Records.Members;
using static StudioBot.Records.Tests.Saying;

namespace StudioBot.Records.Tests.Ledger;

public sealed class PaymentRecordsTests : TwoMembers
{
    [Fact]
    public void A_payment_is_open_for_both_until_it_is_confirmed_and_again_when_that_is_taken_back()
    {
        var paid = Paid(new Account.OfMember(Mira.Id), Pia, 3000);
        var open = Assert.Single(Open(Pia));
        Assert.Equal(new Payment(paid.Id, new Account.OfMember(Mira.Id), Pia.Id, new Money(3000), Morning), open);
        Assert.Equal([open], Open(Mira));

        var receipt = Confirm(open);
        Assert.Empty(Open(Pia));
        Assert.Empty(Open(Mira));

        Studio.File.Write(session => Assert.IsType<Undone.Done>(session.TakeBack(receipt)));
        Assert.Equal([open], Open(Pia));
    }

    [Fact]
    public void The_oldest_comes_first_and_the_kitty_pays_too()
    {
        Paid(new Account.OfKitty(), Pia, 500);
        Paid(new Account.OfMember(Mira.Id), Pia, 700);

        Assert.Equal([500, 700], Open(Pia).Select(payment => payment.Sum.Cents));
        Assert.IsType<Account.OfKitty>(Open(Pia)[0].From);
        Assert.Single(Open(Mira));
    }

    [Fact]
    public void What_was_taken_back_is_open_no_more_and_what_was_confirmed_rests_on_that_word()
    {
        var first = Paid(new Account.OfMember(Mira.Id), Pia, 3000);
        Studio.File.Write(session => Assert.IsType<Undone.Done>(session.TakeBack(first)));
        Assert.Empty(Open(Pia));

        var second = Paid(new Account.OfMember(Mira.Id), Pia, 3000);
        Confirm(Assert.Single(Open(Pia)));
        Studio.File.Write(session => Assert.Single(Assert.IsType<Undone.RestsOn>(session.TakeBack(second)).Later));
        Assert.Equal(2, Studio.File.Read(view => view.Money.Balances()).Count);
    }

    [Fact]
    public void It_is_confirmed_once()
    {
        Paid(new Account.OfMember(Mira.Id), Pia, 3000);
        var open = Assert.Single(Open(Pia));
        Confirm(open);

        Assert.Throws<SqliteException>(() => Confirm(open));
    }

    [Fact]
    public void A_payment_into_the_kitty_waits_for_nobody()
    {
        Studio.File.Write(session => session.Money.Book(session.Said("paid", Mira), [
            new MoneyLine(new Account.OfMember(Mira.Id), new Money(900)), new MoneyLine(new Account.OfKitty(), new Money(-900))]));

        Assert.Empty(Open(Mira));
    }

    private IReadOnlyList<Payment> Open(Member member) => Studio.File.Read(view => view.Payments.OpenOf(member.Id));

    private Act Confirm(Payment payment) => Studio.File.Write(session =>
    {
        var receipt = session.Said("received", Pia);
        session.Payments.Confirm(payment, receipt);
        return receipt;
    });

    private Act Paid(Account from, Member to, long cents) => Studio.File.Write(session =>
    {
        var act = session.Said("paid", Mira);
        session.Money.Book(act, [new MoneyLine(from, new Money(cents)), new MoneyLine(new Account.OfMember(to.Id), new Money(-cents))]);
        return act;
    });
}
