using StudioBot.Chat.Tests.Asking;
using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Costs;
using StudioBot.Records.Ledger;

namespace StudioBot.Chat.Tests.Sharing;

public sealed class KittyCommandTests
{
    private readonly StockedStudio _studio = new();

    [Fact]
    public void What_was_paid_in_lies_in_it()
    {
        Paid(3000);

        Assert.StartsWith("In the kitty: 30.00 EUR", _studio.Says("kitty", _studio.Pia), StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_paid_out_beyond_it_is_short()
    {
        Paid(-1250);

        Assert.StartsWith("The kitty is short of 12.50 EUR", _studio.Says("kitty"), StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_one_says_so() =>
        Assert.Equal("In the kitty: 0.00 EUR\nNothing is booked into it.", _studio.Says("kitty").ReplaceLineEndings("\n"));

    [Fact]
    public void A_group_hears_no_sum()
    {
        Assert.StartsWith("Kitty: settled", _studio.Says("/kitty", chat: ChatKind.Group), StringComparison.Ordinal);
        Paid(3000);
        Assert.StartsWith("Kitty: open", _studio.Says("/kitty", chat: ChatKind.Group), StringComparison.Ordinal);
        Assert.DoesNotMatch(@"\d", _studio.Says("/kitty", chat: ChatKind.Group));
    }

    [Fact]
    public void It_fits_a_phone() => Phone.Fits("kitty");

    private void Paid(long cents) => _studio.Write(session => session.Money.Book(
        _studio.Said(session, "paid", 10, who: _studio.Pia),
        [new MoneyLine(new Account.OfMember(_studio.Pia.Id), new Money(cents)), new MoneyLine(new Account.OfKitty(), new Money(-cents))]));
}
