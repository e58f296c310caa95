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
    public void The_receiver_is_told_and_may_confirm_it_or_take_it_back()
    {
        var aside = Assert.Single(studio.Say("paid 30 to Pia", "Tomas").Asides);

        Assert.Equal("Pia", aside.To.Name);
        Assert.StartsWith("Tomas says: 30.00 paid to you. Did it come?", aside.Reply.PlainText, StringComparison.Ordinal);
        Assert.Equal("received 30.00 from Tomas", aside.Reply.Buttons[0].Line);
        var undo = aside.Reply.Buttons[1].Line;
        Assert.False(studio.Say(undo, "Jonas").Recorded);
        var back = studio.Say(undo, "Pia");
        Assert.True(back.Recorded);
        Assert.Equal("Tomas", Assert.Single(back.Asides).To.Name);
        Assert.Empty(studio.Balances());
    }

    [Theory]
    [InlineData("paid 5 to me")]
    [InlineData("received 5 from me")]
    public void Oneself_is_the_word_at_fault(string words) =>
        Assert.Contains("“me” is you", studio.Refuses(words, "Pia").PlainText, StringComparison.Ordinal);

    [Fact]
    public void A_steward_hands_out_what_is_in_the_kitty()
    {
        studio.Tells("paid 40 to kitty", "Tomas");
        var outcome = studio.Say("paid 30 from kitty to Pia");

        Assert.StartsWith("30.00 paid to Pia out of the kitty.\nBooked: kitty +30.00, Pia −30.00.", Shelves.Words(outcome.Reply), StringComparison.Ordinal);
        Assert.Equal(new() { ["Tomas"] = 4000, ["Pia"] = -3000, ["kitty"] = -1000 }, studio.Balances());
        Assert.Equal("received 30.00 from kitty", Assert.Single(outcome.Asides).Reply.Buttons[0].Line);
    }

    [Fact]
    public void A_steward_who_takes_their_own_out_needs_no_other_word()
    {
        studio.Tells("paid 40 to kitty", "Tomas");
        var outcome = studio.Say("paid 30 from kitty to Mira");

        Assert.True(outcome.Recorded);
        Assert.Empty(outcome.Asides);
        Assert.DoesNotContain("Did it come", studio.Hear("balance me"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_kitty_gives_no_more_than_it_holds_unless_that_is_agreed_to()
    {
        studio.Tells("paid 20 to kitty", "Tomas");
        var asked = studio.Refuses("paid 30 from kitty to Pia");

        Assert.StartsWith("By the books the kitty holds 20.00. Nothing recorded.", asked.PlainText, StringComparison.Ordinal);
        var button = Assert.Single(asked.Buttons);
        Assert.True(button.Agrees);
        studio.Tells(button.Line, agreed: true);
        Assert.Equal(1000, studio.Balances()["kitty"]);
    }

    [Theory]
    [InlineData("paid 30 from kitty to Pia", "Pia", "is for stewards")]
    [InlineData("paid 30 from kitty to kitty", "Mira", "can't pay itself")]
    public void The_kitty_is_kept_by_stewards(string words, string by, string why)
    {
        studio.Tells("paid 40 to kitty", "Tomas");
        Assert.Contains(why, studio.Refuses(words, by).PlainText, StringComparison.Ordinal);
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
