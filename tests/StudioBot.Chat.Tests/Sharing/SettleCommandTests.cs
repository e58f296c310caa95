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
    public void It_is_for_stewards_in_private()
    {
        Assert.True(studio.Say("settle", "Pia").Reply.IsTrouble);
        Assert.True(studio.Say("/settle", chat: ChatKind.Group).Reply.IsTrouble);
    }
}
