using StudioBot.Chat.Tests.Asking;
using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Costs;
using StudioBot.Records.Ledger;
using StudioBot.Records.Members;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Tests.Sharing;

public sealed class BalanceCommandTests
{
    private readonly StockedStudio _studio = new();

    [Fact]
    public void Each_hears_how_they_stand_to_the_cent()
    {
        Owed(_studio.Mira, 2490);
        Owed(_studio.Pia, -705);

        Assert.StartsWith("The studio owes you 24.90 EUR", _studio.Says("balance"), StringComparison.Ordinal);
        Assert.StartsWith("You owe the studio 7.05 EUR", _studio.Says("balance", _studio.Pia), StringComparison.Ordinal);
    }

    [Fact]
    public void A_steward_sees_everybody()
    {
        Owed(_studio.Mira, 2490);
        Owed(_studio.Pia, -705);

        var said = _studio.Says("balance").ReplaceLineEndings("\n");

        Assert.Contains("The studio owes:\nMira  24.90\nOwe the studio:\nPia  7.05\n", said, StringComparison.Ordinal);
        Assert.StartsWith("Pia owes the studio 7.05 EUR", _studio.Says("balance Pia"), StringComparison.Ordinal);
    }

    [Fact]
    public void Who_has_left_and_owes_is_still_named()
    {
        Owed(_studio.Pia, -705);
        _studio.Write(session => session.Members.Leave(_studio.Pia.Id, _studio.Said(session, "leave", 20, who: _studio.Pia)));

        Assert.Matches(@"Pia +7\.05", _studio.Says("balance"));
    }

    [Fact]
    public void Others_are_for_stewards_only()
    {
        Owed(_studio.Mira, 2490);

        var refused = _studio.Answer("balance Mira", _studio.Pia);

        Assert.True(refused.IsTrouble);
        Assert.DoesNotContain("24.90", refused.PlainText, StringComparison.Ordinal);
        Assert.Equal("balance", Assert.Single(refused.Buttons).Line);
        Assert.DoesNotContain("Mira", _studio.Says("balance", _studio.Pia), StringComparison.Ordinal);
        Assert.StartsWith("You are settled", _studio.Says("balance me", _studio.Pia), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/balance", "Balances: open")]
    [InlineData("/balance me", "Your balance: open")]
    [InlineData("/balance Pia", "Pia: settled")]
    public void A_group_hears_no_sum_not_even_from_a_steward(string words, string headline)
    {
        Owed(_studio.Mira, 2490);

        var said = _studio.Says(words, chat: ChatKind.Group);

        Assert.StartsWith(headline, said, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"\d", said);
    }

    [Fact]
    public void A_month_shows_what_was_used_in_it_less_what_was_put_back()
    {
        var white = _studio.Liquid("white");
        var lot = _studio.Bought(white, 500, 1);
        _studio.Went(white, 40, 5, who: _studio.Pia);
        _studio.Went(white, 35, 6, StockReason.Poured, who: _studio.Pia);
        _studio.Went(white, 100, 6);
        _studio.Write(session =>
            session.Stock.AddTo(lot, white, StockedStudio.Ml(15), StockReason.Returned, _studio.Said(session, "left", 7, who: _studio.Pia)));
        Owed(_studio.Pia, -120);

        var said = _studio.Says("what did I use this month", _studio.Pia);

        Assert.StartsWith("You used 1 material in November 2026", said, StringComparison.Ordinal);
        Assert.Matches("white +60 ml", said);                   // 40 + 35 - 15
        Assert.Contains("The account fell by 1.20 EUR.", said, StringComparison.Ordinal);
        Assert.StartsWith("You used nothing in October 2026", _studio.Says("balance 2026-10", _studio.Pia), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("balance")]
    [InlineData("balance Pia")]
    [InlineData("what did i use this month")]
    public void It_fits_a_phone(string words) => Phone.Fits(words);

    private void Owed(Member member, long cents) => _studio.Write(session => session.Money.Book(
        _studio.Said(session, "used", 10, who: member),
        [new MoneyLine(new Account.OfMember(member.Id), new Money(cents)), new MoneyLine(new Account.OfStudio(), new Money(-cents))]));
}
