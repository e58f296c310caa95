using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Recording;

/// <summary>Figures are worked by hand.</summary>
public sealed class StudioPartTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void The_studios_share_is_owed_by_the_maker_and_is_no_cash()
    {
        var maker = Maker(14);
        var said = studio.Tells("sold 14 85 studio 10%");

        Assert.Contains("The studio's 10 %", said, StringComparison.Ordinal);
        Assert.Matches(@"The maker's share +76\.50", said);
        Assert.Contains($"Booked: {maker} −8.50, studio +8.50. Pay it in: paid 8.50 to kitty.", said, StringComparison.Ordinal);
        Assert.Equal(new() { [maker] = -850, ["studio"] = 850 }, studio.Balances());

        studio.Tells("paid 8.50 to kitty", maker);
        Assert.Equal(new() { ["studio"] = 850, ["kitty"] = -850 }, studio.Balances());
    }

    [Fact]
    public void The_sellers_fee_and_the_studios_share_stand_together()
    {
        // 85.00 less 34.00 and less 8.50
        var said = studio.Tells("sold 14 85 gallery 40% studio 10%");

        Assert.Matches(@"The seller's 40 % +34\.00\nThe studio's 10 % +8\.50\nThe maker's share +42\.50", said);
        Assert.Equal(850, studio.Balances()["studio"]);
    }

    [Fact]
    public void More_than_the_price_is_refused() =>
        Assert.Contains("more than the price", studio.Refuses("sold 14 85 gallery 60% studio 50%").PlainText, StringComparison.Ordinal);

    [Fact]
    public void Only_the_maker_or_a_steward_books_it_and_the_maker_hears_of_it()
    {
        var maker = Maker(14);
        var other = studio.Look(view => view.Members.All().First(member => member.Name != maker && member.Role == Records.Members.Role.Member).Name);
        Assert.Contains($"piece 14 is {maker}'s", studio.Refuses("sold 14 85 studio 10%", other).PlainText, StringComparison.Ordinal);

        var asides = studio.Say("sold 14 85 studio 10%").Asides;
        Assert.Equal(maker == "Mira" ? [] : [maker], asides.Select(aside => aside.To.Name));
    }

    [Fact]
    public void It_can_be_taken_back()
    {
        studio.Tells("sold 14 85 studio 10%");
        Assert.True(studio.Say("undo").Recorded);
        Assert.Empty(studio.Balances());
    }

    private string Maker(int number) => studio.Look(view => view.Pieces.Find(number)!.Maker);
}
