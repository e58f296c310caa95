using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Sharing;

/// <summary>Figures are worked by hand.</summary>
public sealed class SettleCommandTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void Who_owes_pays_the_kitty_and_it_pays_whom_it_owes()
    {
        studio.Tells("paid 30 to Pia", "Tomas");
        studio.Tells("paid 10 to Mira", "Tomas");

        var reply = studio.Say("settle").Reply;

        Assert.Contains(
            "So all members come to zero:\nInto the kitty:\nPia   30.00\nMira  10.00\nThen out of it:\nTomas  40.00\nIn the kitty then: 0.00.",
            Shelves.Words(reply),
            StringComparison.Ordinal);
        Assert.Equal(["paid 10.00 to kitty", "paid 40.00 from kitty to Tomas"], reply.Buttons.Select(button => button.Line));
    }

    [Fact]
    public void The_messages_it_suggests_bring_all_to_zero()
    {
        studio.Tells("paid 30 to Pia", "Tomas");
        studio.Tells("paid 10 to Mira", "Tomas");
        var buttons = studio.Say("settle").Reply.Buttons;
        studio.Tells("paid 30 to kitty", "Pia");
        foreach (var button in buttons)
        {
            studio.Tells(button.Line);
        }

        Assert.Empty(studio.Balances());
        Assert.StartsWith("All members are at zero.", studio.Hear("settle"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_lies_on_the_shelf_stays_owed_and_no_more_is_suggested_than_the_kitty_holds()
    {
        studio.Tells("bought 1 L white 30.00", "Tomas");
        studio.Tells("bought 1 L white 10.00", "Pia");
        studio.Tells("paid 8 to kitty", "Jonas");
        studio.Tells("paid 8 to Jonas", "Mira");

        // 8.00 for 30.00 + 10.00 + 8.00 owed: 5.00, 1.67 and 1.33 by largest remainder
        var said = studio.Hear("settle");

        Assert.StartsWith("As far as the cash goes:", said, StringComparison.Ordinal);
        Assert.Matches(@"Then out of it:\nTomas +5\.00\nPia +1\.67\nMira +1\.33\n", said);
        Assert.Contains("40.00 lies on the shelf: the studio's, owed until it is used.", said, StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_lost_and_borne_by_nobody_does_not_lie_on_the_shelf()
    {
        using var empty = LiveStudio.Empty();
        empty.Tells("studio sharing nobody");
        empty.Tells("material new pearl ink 1 L");
        empty.Tells("bought 1 L pearl ink 20.00");
        empty.Tells("count pearl ink 200 ml");   // 800 ml less, at 20.00 a litre: 16.00

        Assert.Contains(
            "4.00 lies on the shelf: the studio's, owed until it is used. 16.00 lost and borne by nobody.",
            empty.Hear("settle"),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Who_has_left_is_looked_at_and_brought_to_zero_by_a_stewards_word()
    {
        studio.Tells("paid 30 to Pia", "Tomas");
        studio.Tells("received 30 from Tomas", "Pia");
        foreach (var name in new[] { "Tomas", "Pia" })
        {
            Assert.True(studio.Say("leave", name, agreed: true).Recorded);
        }

        Assert.StartsWith("Pia owes the studio 30.00", studio.Hear("balance Pia"), StringComparison.Ordinal);
        Assert.Equal([3000], studio.Entries("Mira", "balance tomas entries").Select(entry => entry.Sum));
        Assert.True(studio.Say("balance Pia", "Jonas").Reply.IsTrouble);
        Assert.Contains("“Pia” has left", studio.Refuses("paid 5 to Pia", "Jonas").PlainText, StringComparison.Ordinal);
        Assert.Contains("“Pia” has left", studio.Refuses("paid 5 from Pia to kitty", "Jonas").PlainText, StringComparison.Ordinal);

        var lines = studio.Say("settle").Reply.Buttons.Select(button => button.Line).ToList();
        Assert.Equal(["paid 30.00 from kitty to Tomas", "paid 30.00 from Pia to kitty"], lines);
        foreach (var line in lines.AsEnumerable().Reverse())
        {
            Assert.Empty(studio.Say(line).Asides);
        }

        Assert.Empty(studio.Balances());
        Assert.Equal("Pia is settled", studio.Hear("balance Pia").Split('\n')[0]);
    }

    [Fact]
    public void What_who_has_left_pays_to_a_member_waits_for_that_members_word()
    {
        Assert.True(studio.Say("leave", "Pia", agreed: true).Recorded);

        var told = Assert.Single(studio.Say("paid 10 from Pia to Jonas").Asides);
        Assert.StartsWith("Mira says: 10.00 paid to you by Pia. Did it come?", told.Reply.PlainText, StringComparison.Ordinal);
        Assert.True(studio.Say(told.Reply.Buttons[0].Line, "Jonas").Recorded);
        Assert.Equal(new() { ["Pia"] = 1000, ["Jonas"] = -1000 }, studio.Balances());

        Assert.Empty(studio.Say("paid 10 to Pia", "Mira").Asides);
        Assert.DoesNotContain("Unconfirmed", studio.Hear("balance me"), StringComparison.Ordinal);
    }

    [Fact]
    public void It_is_for_stewards_in_private()
    {
        Assert.True(studio.Say("settle", "Pia").Reply.IsTrouble);
        Assert.True(studio.Say("/settle", chat: ChatKind.Group).Reply.IsTrouble);
    }
}
