using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Sharing;

public sealed class MemberAccountTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Empty();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void A_balance_opens_down_to_its_entries_and_each_says_what_stood_after_it()
    {
        studio.Tells("paid 12 to kitty", "Pia");
        studio.Tells("bought 1 L white 18.50", "Pia");
        studio.Tells("paid 5.25 to Mira", "Pia");
        studio.Tells("paid 30 to Pia");

        Assert.Equal([(-3000, 575), (525, 3575), (1850, 3050), (1200, 1200)], studio.Entries("Pia"));
        Assert.Equal(575, studio.Balance("Pia"));
        var said = studio.Hear("balance entries", "Pia");
        Assert.Contains("25 Nov bought 1 L", said, StringComparison.Ordinal);
        Assert.Contains("25 Nov Mira: paid", said, StringComparison.Ordinal);
    }

    [Fact]
    public void The_entries_of_many_pages_make_the_sum_shown()
    {
        for (var i = 1; i <= 40; i++)
        {
            studio.Now += TimeSpan.FromHours(7);
            studio.Tells($"paid {i}.37 to {(i % 3 == 0 ? "Mira" : "kitty")}", "Pia");
        }

        Assert.True(studio.Say("undo", "Pia").Recorded);
        var entries = studio.Entries("Pia");
        Assert.Equal(41, entries.Count);
        Assert.Equal(studio.Balance("Pia"), entries.Sum(entry => entry.Sum));
        Assert.Equal(studio.Balances()["Pia"], entries[0].After);
        Assert.Equal(studio.Balance("Pia"), entries.Zip(entries.Skip(1), (newer, older) => newer.After - older.After).Sum() + entries[^1].After);
    }

    [Fact]
    public void A_month_has_the_entries_that_are_about_it()
    {
        studio.Tells("paid 7 to kitty", "Pia");
        studio.Now += TimeSpan.FromDays(10);     // 5 December
        studio.Tells("paid 2.50 to kitty", "Pia");
        studio.Tells("paid 1 to kitty 28 nov", "Pia");

        Assert.Equal([100, 700], studio.Entries("Pia", "balance 2026-11 me entries").Select(entry => entry.Sum));
        Assert.StartsWith("November 2026: +8.00", studio.Hear("balance november entries", "Pia"), StringComparison.Ordinal);
        Assert.Equal([250], studio.Entries("Pia", "balance this month entries").Select(entry => entry.Sum));
    }

    [Fact]
    public void A_month_is_shown_by_its_parts_and_an_undo_belongs_to_what_it_takes_back()
    {
        studio.Tells("bought 1 L white 18.50", "Pia");
        studio.Tells("paid 12 to kitty", "Pia");
        studio.Tells("paid 3 to kitty", "Pia");
        Assert.True(studio.Say("undo", "Pia").Recorded);
        studio.Tells("paid 30 to Pia");

        var said = studio.Hear("balance", "Pia");

        Assert.StartsWith("The studio owes you 0.50 EUR\nIn November 2026:\n", said, StringComparison.Ordinal);
        Assert.Matches(@"Bought +\+18\.50\nGot +−30\.00\nPaid +\+12\.00\n", said);
    }

    [Fact]
    public void What_was_taken_back_altogether_is_no_part_of_it()
    {
        studio.Tells("paid 30 to Pia");
        Assert.True(studio.Say("undo").Recorded);
        Assert.DoesNotContain("Got", studio.Hear("balance", "Pia"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_another_wrote_for_one_names_who_wrote_it()
    {
        studio.Tells("bought 1 L white 18.50", "Pia");
        studio.Tells("used 100 ml white for Mira", "Pia");
        studio.Tells("used 50 ml white");

        var said = studio.Hear("balance me entries");
        Assert.Contains("25 Nov Pia: u", said, StringComparison.Ordinal);   // cut to the phone's width
        Assert.Contains("25 Nov used 5", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Others_entries_are_for_stewards_and_none_are_told_in_a_group()
    {
        studio.Tells("paid 12 to kitty", "Pia");

        Assert.StartsWith("The studio owes Pia 12.00 EUR", studio.Hear("balance Pia entries"), StringComparison.Ordinal);
        Assert.Equal([1200], studio.Entries("Mira", "balance Pia entries").Select(entry => entry.Sum));
        Assert.True(studio.Say("balance Mira entries", "Pia").Reply.IsTrouble);
        foreach (var words in new[] { "/balance entries", "/balance Pia entries" })
        {
            Assert.DoesNotMatch(@"\d", studio.Say(words, chat: ChatKind.Group).Reply.PlainText);
        }
    }

    [Fact]
    public void Who_owes_gets_the_message_that_pays_it()
    {
        studio.Tells("paid 30 to Pia");
        Assert.Contains(studio.Say("balance", "Pia").Reply.Buttons, button => button.Line == "paid 30.00 to kitty");
    }
}
