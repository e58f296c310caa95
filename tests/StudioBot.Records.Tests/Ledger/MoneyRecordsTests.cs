using StudioBot.Craft.Costs;
using StudioBot.Records.Ledger;
using StudioBot.Records.Members;
using static StudioBot.Records.Tests.Saying;

namespace StudioBot.Records.Tests.Ledger;

public sealed class MoneyRecordsTests : IDisposable
{
    private readonly TemporaryStudio studio = new();
    private readonly Member mira;
    private readonly Member pia;

    public MoneyRecordsTests() => (mira, pia) = studio.File.Write(session => (
        session.Members.Add("Mira", Role.Steward, Morning), session.Members.Add("Pia", Role.Member, Morning)));

    public void Dispose() => studio.Dispose();

    [Fact]
    public void A_balance_is_the_sum_of_what_was_booked()
    {
        Book((Of(mira), 2490), (new Account.OfStudio(), -2490));
        Book((new Account.OfStudio(), 700), (Of(pia), -700));
        Book((Of(pia), 700), (new Account.OfKitty(), -700));

        // 24.90 paid; 7.00 used and paid to the kitty, so that Pia is even.
        Assert.Equal(
            [
                new MoneyLine(new Account.OfKitty(), new Money(-700)),
                new MoneyLine(Of(mira), new Money(2490)),
                new MoneyLine(new Account.OfStudio(), new Money(-1790)),
            ],
            studio.File.Read(view => view.Money.Balances()));
    }

    [Fact]
    public void What_does_not_add_up_to_zero_is_not_booked()
    {
        Assert.Throws<ArgumentException>(() => Book((Of(mira), 2490), (Of(pia), -2489)));

        Assert.Empty(studio.File.Read(view => view.Money.Entries()));
    }

    [Fact]
    public void The_lines_of_an_act_come_back_in_their_order()
    {
        var act = studio.File.Write(session =>
        {
            var paid = session.Said("paid", mira);
            session.Money.Book(paid, [
                new MoneyLine(Of(mira), new Money(3000)), new MoneyLine(Of(pia), new Money(-3000))]);
            return paid;
        });

        Assert.Equal(
            [
                new MoneyEntry(act.Id, Of(mira), new Money(3000), Morning),
                new MoneyEntry(act.Id, Of(pia), new Money(-3000), Morning),
            ],
            studio.File.Read(view => view.Money.Of(act)));
    }

    private static Account.OfMember Of(Member member) => new(member.Id);

    private void Book(params (Account Account, long Cents)[] lines) => studio.File.Write(session =>
        session.Money.Book(
            session.Said("paid", mira), [.. lines.Select(line => new MoneyLine(line.Account, new Money(line.Cents)))]));
}
