using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Sharing;

public sealed class PaidCommandTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void What_one_gives_the_other_has()
    {
        Assert.StartsWith("30.00 paid to Pia.\nBooked: Mira +30.00, Pia −30.00.", studio.Tells("paid 30 to Pia"), StringComparison.Ordinal);
        Assert.Equal(new() { ["Mira"] = 3000, ["Pia"] = -3000 }, studio.Balances());
    }

    [Fact]
    public void The_kitty_can_be_paid()
    {
        var outcome = studio.Say("paid 12.50 to kitty", "Pia");

        Assert.StartsWith("12.50 into the kitty.", outcome.Reply.PlainText, StringComparison.Ordinal);
        Assert.Empty(outcome.Asides);
        Assert.Equal(new() { ["Pia"] = 1250, ["kitty"] = -1250 }, studio.Balances());
    }

    [Fact]
    public void The_receiver_is_told_and_may_take_it_back()
    {
        var aside = Assert.Single(studio.Say("paid 30 to Pia", "Tomas").Asides);

        Assert.Equal("Pia", aside.To.Name);
        Assert.StartsWith("Tomas says: 30.00 paid to you.", aside.Reply.PlainText, StringComparison.Ordinal);
        var undo = Assert.Single(aside.Reply.Buttons).Line;
        Assert.False(studio.Say(undo, "Jonas").Recorded);
        Assert.True(studio.Say(undo, "Pia").Recorded);
        Assert.Empty(studio.Balances());
    }

    [Theory]
    [InlineData("paid 30 to Mira", "is you")]
    [InlineData("paid 0 to Pia", "nothing to book")]
    [InlineData("paid $30 to Pia", "they are in EUR")]
    public void What_makes_no_sense_is_refused(string words, string why) =>
        Assert.Contains(why, studio.Refuses(words).PlainText, StringComparison.Ordinal);

    [Fact]
    public void It_can_be_taken_back() => studio.IsUndone("paid 30 to Pia");
}
