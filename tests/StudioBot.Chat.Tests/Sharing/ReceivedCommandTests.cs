using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Sharing;

public sealed class ReceivedCommandTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void Who_paid_hears_that_it_came_and_nothing_else_changes()
    {
        studio.Tells("paid 30 to Pia", "Tomas");
        var before = studio.Whole();
        Assert.Contains("Unconfirmed: 30.00 to Pia.", studio.Hear("balance", "Tomas"), StringComparison.Ordinal);
        Assert.Contains("Did it come: 30.00 from Tomas?", studio.Hear("balance", "Pia"), StringComparison.Ordinal);

        var outcome = studio.Say("received 30 from Tomas", "Pia");

        Assert.StartsWith("Confirmed: 30.00 from Tomas, paid 25 Nov.", outcome.Reply.PlainText, StringComparison.Ordinal);
        var aside = Assert.Single(outcome.Asides);
        Assert.Equal("Tomas", aside.To.Name);
        Assert.StartsWith("Pia confirms: 30.00 came.", aside.Reply.PlainText, StringComparison.Ordinal);
        Assert.Equal(before, studio.Whole());
        Assert.DoesNotContain("Unconfirmed", studio.Hear("balance", "Tomas"), StringComparison.Ordinal);
        Assert.DoesNotContain("Did it come", studio.Hear("balance", "Pia"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_oldest_of_that_sum_is_confirmed_first_and_each_once()
    {
        studio.Tells("paid 30 to Pia", "Tomas");
        studio.Now += TimeSpan.FromDays(1);
        studio.Tells("paid 30 to Pia", "Tomas");

        Assert.Contains("paid 25 Nov", studio.Tells("received 30 from Tomas", "Pia"), StringComparison.Ordinal);
        Assert.Contains("paid 26 Nov", studio.Tells("received 30 from Tomas", "Pia"), StringComparison.Ordinal);
        Assert.Contains("No payment to you is open", studio.Refuses("received 30 from Tomas", "Pia").PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void It_can_be_taken_back_and_waits_again()
    {
        studio.Tells("paid 30 to Pia", "Tomas");
        studio.Tells("received 30 from Tomas", "Pia");
        Assert.True(studio.Say("undo", "Pia").Recorded);

        Assert.Contains("Did it come: 30.00 from Tomas?", studio.Hear("balance", "Pia"), StringComparison.Ordinal);
        Assert.Equal(-3000, studio.Balances()["Pia"]);
        studio.Tells("received 30 from Tomas", "Pia");
    }

    [Fact]
    public void What_was_confirmed_rests_on_that_word_until_it_is_taken_back()
    {
        studio.Tells("paid 30 to Pia", "Tomas");
        studio.Tells("received 30 from Tomas", "Pia");
        var before = studio.Whole();

        var refused = studio.Say("undo", "Tomas").Reply;
        Assert.StartsWith("Not taken back: later records rest on it.\n  received 30 from Tomas", Shelves.Words(refused), StringComparison.Ordinal);
        Assert.Equal(before, studio.Whole());

        Assert.True(studio.Say("undo", "Pia").Recorded);
        Assert.True(studio.Say("undo", "Tomas").Recorded);
        Assert.Empty(studio.Balances());
    }

    [Theory]
    [InlineData("Tomas")]
    [InlineData("Mira")]
    public void Who_was_to_get_it_hears_that_it_was_taken_back(string by)
    {
        studio.Tells("paid 30 to Pia", "Tomas");
        var act = studio.Look(view => view.Acts.Recent(null, studio.Now)).First(one => one.Kind == "paid");

        var told = studio.Say($"undo act {act.Id}", by).Asides.Single(aside => aside.To.Name == "Pia");
        Assert.Equal($"{by} took back what was said to be paid to you:\n  paid 30 to Pia", Shelves.Words(told.Reply));
    }

    [Fact]
    public void What_the_kitty_is_said_to_have_paid_is_written_down_by_a_steward()
    {
        var refused = studio.Refuses("received 5 from kitty", "Pia");

        Assert.Contains("A steward who hands it out writes it down:", refused.PlainText, StringComparison.Ordinal);
        Assert.EndsWith("paid 5.00 from kitty to Pia", refused.PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void A_payment_that_was_taken_back_cannot_be_confirmed()
    {
        studio.Tells("paid 30 to Pia", "Tomas");
        Assert.True(studio.Say("undo", "Tomas").Recorded);
        Assert.Contains("“Tomas”: nothing they paid you waits", studio.Refuses("received 30 from Tomas", "Pia").PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void Another_sum_or_payer_is_named_and_what_is_open_is_listed()
    {
        studio.Tells("paid 30 to Pia", "Tomas");
        var sum = studio.Refuses("received 40 from Tomas", "Pia");
        Assert.StartsWith("“40.00” is not what Tomas paid you.", sum.PlainText, StringComparison.Ordinal);
        Assert.Equal("received 30.00 from Tomas", Assert.Single(sum.Buttons).Line);

        var payer = studio.Refuses("received 30 from Jonas", "Pia");
        Assert.StartsWith("“Jonas”: nothing they paid you", payer.PlainText, StringComparison.Ordinal);
        Assert.Equal("received 30.00 from Tomas", Assert.Single(payer.Buttons).Line);
    }

    [Fact]
    public void What_came_out_of_the_kitty_is_confirmed_to_the_steward_who_handed_it_out()
    {
        studio.Tells("paid 40 to kitty", "Tomas");
        studio.Tells("paid 30 from kitty to Pia");
        var aside = Assert.Single(studio.Say("received 30 from kitty", "Pia").Asides);
        Assert.Equal("Mira", aside.To.Name);
        Assert.StartsWith("Pia confirms: 30.00 out of the kitty came.", aside.Reply.PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void A_group_does_not_hear_it()
    {
        studio.Tells("paid 30 to Pia", "Tomas");
        Assert.False(studio.Say("/received 30 from Tomas", "Pia", chat: ChatKind.Group).Recorded);
    }
}
