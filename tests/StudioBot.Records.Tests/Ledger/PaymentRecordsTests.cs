using Microsoft.Data.Sqlite;
using StudioBot.Craft.Costs;
using StudioBot.Records.Acts;
using StudioBot.Records.Ledger;
using StudioBot.Records.Members;
using static StudioBot.Records.Tests.Saying;

namespace StudioBot.Records.Tests.Ledger;

public sealed class PaymentRecordsTests : IDisposable
{
    private readonly TemporaryStudio studio = new();
    private readonly Member mira;
    private readonly Member pia;

    public PaymentRecordsTests() => (mira, pia) = studio.File.Write(session => (
        session.Members.Add("Mira", Role.Steward, Morning), session.Members.Add("Pia", Role.Member, Morning)));

    public void Dispose() => studio.Dispose();

    [Fact]
    public void A_payment_is_open_for_both_until_it_is_confirmed_and_again_when_that_is_taken_back()
    {
        var paid = Paid(new Account.OfMember(mira.Id), pia, 3000);
        var open = Assert.Single(Open(pia));
        Assert.Equal(new Payment(paid.Id, new Account.OfMember(mira.Id), pia.Id, new Money(3000), Morning), open);
        Assert.Equal([open], Open(mira));

        var receipt = Confirm(open);
        Assert.Empty(Open(pia));
        Assert.Empty(Open(mira));

        studio.File.Write(session => Assert.IsType<Undone.Done>(session.TakeBack(receipt)));
        Assert.Equal([open], Open(pia));
    }

    [Fact]
    public void The_oldest_comes_first_and_the_kitty_pays_too()
    {
        Paid(new Account.OfKitty(), pia, 500);
        Paid(new Account.OfMember(mira.Id), pia, 700);

        Assert.Equal([500, 700], Open(pia).Select(payment => payment.Sum.Cents));
        Assert.IsType<Account.OfKitty>(Open(pia)[0].From);
        Assert.Single(Open(mira));
    }

    [Fact]
    public void What_was_taken_back_is_open_no_more_and_what_was_confirmed_can_be_taken_back()
    {
        var first = Paid(new Account.OfMember(mira.Id), pia, 3000);
        studio.File.Write(session => Assert.IsType<Undone.Done>(session.TakeBack(first)));
        Assert.Empty(Open(pia));

        var second = Paid(new Account.OfMember(mira.Id), pia, 3000);
        Confirm(Assert.Single(Open(pia)));
        studio.File.Write(session => Assert.IsType<Undone.Done>(session.TakeBack(second)));
        Assert.Empty(studio.File.Read(view => view.Money.Balances()));
    }

    [Fact]
    public void It_is_confirmed_once()
    {
        Paid(new Account.OfMember(mira.Id), pia, 3000);
        var open = Assert.Single(Open(pia));
        Confirm(open);

        Assert.Throws<SqliteException>(() => Confirm(open));
    }

    [Fact]
    public void A_payment_into_the_kitty_waits_for_nobody()
    {
        studio.File.Write(session => session.Money.Book(session.Said("paid", mira), [
            new MoneyLine(new Account.OfMember(mira.Id), new Money(900)), new MoneyLine(new Account.OfKitty(), new Money(-900))]));

        Assert.Empty(Open(mira));
    }

    private IReadOnlyList<Payment> Open(Member member) => studio.File.Read(view => view.Payments.OpenOf(member.Id));

    private Act Confirm(Payment payment) => studio.File.Write(session =>
    {
        var receipt = session.Said("received", pia);
        session.Payments.Confirm(payment, receipt);
        return receipt;
    });

    private Act Paid(Account from, Member to, long cents) => studio.File.Write(session =>
    {
        var act = session.Said("paid", mira);
        session.Money.Book(act, [new MoneyLine(from, new Money(cents)), new MoneyLine(new Account.OfMember(to.Id), new Money(-cents))]);
        return act;
    });
}
