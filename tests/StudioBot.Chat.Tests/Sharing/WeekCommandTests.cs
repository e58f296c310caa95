using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Sharing;

/// <summary>Figures worked by hand; weeks are those of ISO 8601, from Monday to Sunday of the studio's zone.</summary>
public sealed class WeekCommandTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Empty();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void What_was_used_bought_and_by_whom_stands_in_it_without_what_was_undone()
    {
        On(11, 24);
        studio.Tells("bought 1 L white 12.00");
        studio.Tells("used 60 ml white", "Pia");
        studio.Tells("used 15 ml white");
        studio.Tells("used 5 ml white");
        Assert.True(studio.Say("undo").Recorded);

        var week = studio.Hear("week");

        // 24 November 2026 is the Tuesday of ISO week 48; 60 + 15 are 75.
        Assert.StartsWith("Week 48, 23 Nov to 29 Nov so far", week, StringComparison.Ordinal);
        Assert.Contains("Used: white 75 ml.", week, StringComparison.Ordinal);
        Assert.Contains("Bought: white 1000 ml, for 12.00 EUR.", week, StringComparison.Ordinal);
        Assert.Contains("Pia white 60 ml", week, StringComparison.Ordinal);
        Assert.Contains("Mira white 15 ml", week, StringComparison.Ordinal);
    }

    [Fact]
    public void Sunday_s_last_minute_is_in_it_and_Monday_s_first_is_not()
    {
        On(11, 16);
        studio.Tells("count white 500 ml");
        studio.Now = new DateTimeOffset(2026, 11, 22, 22, 59, 0, TimeSpan.Zero);    // Sunday 23:59 in Vienna
        studio.Tells("used 10 ml white");
        studio.Now = new DateTimeOffset(2026, 11, 22, 23, 0, 0, TimeSpan.Zero);     // Monday 0:00 there
        studio.Tells("used 40 ml white");

        Assert.Contains("Used: white 10 ml.", studio.Hear("week 47"), StringComparison.Ordinal);
        Assert.Contains("Used: white 40 ml.", studio.Hear("week"), StringComparison.Ordinal);
    }

    [Fact]
    public void Pieces_are_counted_by_what_happened_to_them()
    {
        On(11, 24);
        studio.Tells("pour 20cm panel swipe 3 colours");
        studio.Tells("pour 20cm panel bloom 3 colours");
        studio.Tells("dry 1");

        Assert.Contains("Pieces: 2 poured, 1 ready.", studio.Hear("week"), StringComparison.Ordinal);
    }

    [Fact]
    public void In_a_group_no_sum_is_told()
    {
        On(11, 24);
        studio.Tells("bought 1 L white 12.00");

        Assert.DoesNotContain(
            "12.00", studio.Say("/week", chat: ChatKind.Group).Reply.PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void It_fits_a_phone_in_the_invented_studio() => Assert.All(
        ["week", "week 47", "week 46"],
        words => Assert.True(LineBudget.Of(Sample.Answer(words)!) <= LineBudget.Lines, words));

    private void On(int month, int day) => studio.Now = new DateTimeOffset(2026, month, day, 9, 0, 0, TimeSpan.Zero);
}
