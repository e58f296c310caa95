using StudioBot.Chat.Drying;
using StudioBot.Chat.Tests.Support;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Tests.Drying;

/// <summary>Best guess, interval and what it rests on; or no figure and why. Days are worked by hand; the first is Monday 2 November.</summary>
public sealed class OutlookWordsTests : IDisposable
{
    private readonly SmallStudio studio = new();

    public void Dispose() => studio.Dispose();

    // 2.5 mm at 20 °C 55 %: 5.14 to 22.2 days, outward to whole days: the 7th to the 25th; 10.7 days: the 13th
    [Fact]
    public void A_fresh_piece_rests_on_common_practice() => Assert.Equal(
        "Ready 7–25 Nov, likely 13 Nov. Common practice, no weighings yet.",
        studio.Reads("studio", 20, 55).Says(studio.Pours(), 0));

    [Fact]
    public void A_room_nobody_read_is_said() => Assert.Equal(
        "Ready 7–25 Nov, likely 13 Nov. Common practice, no weighings yet. No room was read: 20 °C, 55 % taken.",
        studio.Says(studio.Pours(), 0));

    // not yet on day 10: 5.08 and 16.7 days more: likely the 17th, by the 29th
    [Fact]
    public void A_check_by_hand_is_what_it_rests_on()
    {
        var number = studio.Reads("studio", 20, 55).Reads("studio", 20, 55, 9).Pours();

        var says = studio.Happens(number, 10, new PieceEvent.NotYet(null)).Says(number, 10);
        Assert.Matches(@"^Ready 1\d–29 Nov, likely 17 Nov\. From 1 check by hand, no weighings yet\.$", says);
    }

    [Fact]
    public void An_old_reading_is_said()
    {
        var number = studio.Reads("studio", 20, 55).Pours();

        Assert.EndsWith("Its room was not read for a week.", studio.Says(number, 8), StringComparison.Ordinal);
    }

    // skin closes after a day and a half in the reference room: of these two one counts
    [Fact]
    public void Weighings_that_come_too_early_are_noted()
    {
        var number = studio.Reads("studio", 23, 50).Pours();

        Assert.Contains("Common practice; 2 weighings noted, too few since the skin closed.", studio.Weighs(number, 1, 700.1).Weighs(number, 2, 690.2)
            .Says(number, 2), StringComparison.Ordinal);
    }

    [Fact]
    public void Weighings_are_counted()
    {
        var number = studio.Reads("studio", 20, 55).Pours();
        studio.Weighs(number, 3, 640.4).Weighs(number, 5, 628.9).Weighs(number, 6, 626.3).Weighs(number, 7, 624.2);

        Assert.Matches(@"^Ready .+, likely .+\. From 4 weighings\.$", studio.Says(number, 7));
    }

    [Fact]
    public void A_weight_that_rose_gives_no_figure()
    {
        var number = studio.Reads("studio", 20, 55).Pours();
        studio.Weighs(number, 3, 640.4).Weighs(number, 5, 628.9).Weighs(number, 6, 629.7);

        Assert.Equal(
            "No ready day. Weight rose 0.8 g: damp air or a slip, no estimate. Weigh it again; undo the weighing if it was a slip.",
            studio.Says(number, 6));
    }

    [Fact]
    public void Cold_air_gives_no_figure_and_what_would_help()
    {
        var says = studio.Reads("studio", 8, 55).Says(studio.Pours(), 0);

        Assert.Matches("^No ready day\\. Below 10 °C .+\\. Warm the room .+\\.$", says);
    }

    // 8 mm: the middle of a film that thick lies at 8·(8/2.5)^1.75 = 61 equivalent days, and its late end beyond any plan
    [Fact]
    public void A_day_too_far_off_is_only_not_before()
    {
        var number = studio.Reads("studio", 20, 55).Pours(millilitres: 8 * 90 * 1.2);

        Assert.Matches(@"^Not before \d+ Dec\. The late end is more than 60 days off\.", studio.Says(number, 0));
    }

    // the untaught late end is 16.6 equivalent days: twice that, and nobody looked
    [Fact]
    public void Nobody_looked_for_long_is_overdue()
    {
        var number = studio.Reads("studio", 23, 50).Pours();

        Assert.DoesNotContain("Overdue", studio.Says(number, 33), StringComparison.Ordinal);
        Assert.StartsWith("Overdue, look at it.", studio.Says(number, 34), StringComparison.Ordinal);
    }

    // worked by hand: median 8, 80 % 3.9 to 16.6 equivalent days: three in ten are left after 10.7, one in ten after 16.6
    [Theory]
    [InlineData(10, @"^Ready ")]
    [InlineData(13, @"^Check by hand, dry by \d+ Nov\. 80 % likely dry now\.")]
    [InlineData(17, @"^Likely dry, check by hand\. 91 % likely dry now\.")]
    public void Odds_that_call_for_a_hand_are_said_and_it_is_never_called_ready(double day, string pattern)
    {
        var number = studio.Reads("studio", 23, 50).Pours();

        Assert.Matches(pattern, studio.Says(number, day));
    }

    [Theory]
    [InlineData(3, 9, "4–10 Nov")]
    [InlineData(3, 3, "4 Nov")]
    [InlineData(27, 36, "28 Nov–7 Dec")]
    public void A_span_names_a_month_once(int from, int to, string says)
    {
        var first = new DateOnly(2026, 11, 1);

        Assert.Equal(says, OutlookWords.Span(first.AddDays(from), first.AddDays(to)));
    }
}
