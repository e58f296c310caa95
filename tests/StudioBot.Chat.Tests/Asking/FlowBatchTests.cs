using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Asking;

/// <summary>A batch of medium is read as mixed and after 20, 40 and 60 ml of thinner: 40, 32, 26 and 22 s of a Ford 4 at 20 °C, that is 136.7,
/// 105.9, 82.8 and 67.4 mm²/s (ASTM D1200).</summary>
public sealed class FlowBatchTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public FlowBatchTests()
    {
        Tells("room 20C 50%");
        Tells("mix medium 400 ml ford4 40 s 20C");      // batch 14
        foreach (var seconds in new[] { 32, 26, 22 })
        {
            Tells("batch 14 added 20 ml thinner");
            Tells($"batch 14 ford4 {seconds} s 20C");
        }
    }

    public void Dispose() => studio.Dispose();

    [Fact]
    public void How_much_more_rests_on_the_studios_own_readings_and_says_so()
    {
        var reply = Ask("flow batch 14 want 20 s");

        // ln falls by 0.24 a step of 20 ml, and from 67.4 to 59.7 mm²/s (20 s) is 0.12: about half a step
        var more = double.Parse(reply.PlainText.Split(' ')[1], null);
        Assert.InRange(more, 5, 20);
        Assert.StartsWith($"Add {more} ml thinner", reply.PlainText, StringComparison.Ordinal);
        Assert.Contains("Batch 14, 460 ml, to Ford 4 20 s at 20 °C.", reply.PlainText, StringComparison.Ordinal);
        Assert.Contains("by your 4 readings since today (common practice 4.9 %)", reply.PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void Too_thin_already_it_takes_the_base_back() => Assert.Matches(
        @"^Add \d+ ml neutral base\n", Ask("flow batch 14 want 26 s").PlainText.ReplaceLineEndings("\n"));

    [Fact]
    public void A_colder_room_takes_more_of_it()
    {
        var warm = More();
        Tells("room 17C 50%");

        Assert.True(More() > warm);

        double More() => double.Parse(Ask("flow batch 14 want 20 s").PlainText.Split(' ')[1], null);
    }

    [Fact]
    public void Beside_two_readings_of_a_cup_the_own_ones_are_told() => Assert.Matches(
        @"By your 4 readings since today: [\d.]+ ml thinner, [\d.]+ ml to [\d.]+ ml\.",
        Ask("flow ford4 40 s in 200 ml, added 10 ml thinner, now 31 s, want 24 s").PlainText);

    [Fact]
    public void One_reading_is_told_by_them_too() => Assert.Matches(
        @"By your 4 readings since today: [\d.]+ ml thinner, [\d.]+ ml to [\d.]+ ml\.",
        Ask("flow ford4 40 s in 200 ml, want 24 s").PlainText);

    [Theory]
    [InlineData("flow batch 14", "the reading you want is missing")]
    [InlineData("flow batch 14 want 5 s", "5 s")]                       // ASTM D1200: a Ford 4 tells 20 to 100 s
    [InlineData("flow batch 13 want 20 s", "not on record")]
    public void What_can_not_be_told_says_what_would_work(string words, string why) =>
        Assert.Contains(why, studio.Say(words).Reply.PlainText, StringComparison.OrdinalIgnoreCase);

    [Fact]
    public void A_batch_whose_contents_nobody_wrote_says_so_once_it_is_read()
    {
        Tells("batch 12 ford4 22 s 21C");

        Assert.Contains("what is in batch 12 is not on record", studio.Say("flow batch 12 want 24 s").Reply.PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_a_batch_that_is_gone_nothing_is_left()
    {
        Tells("batch 14 bin sour");

        Assert.StartsWith("No figure: nothing is left of batch 14.", studio.Say("flow batch 14 want 20 s").Reply.PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cup_behind_want_is_the_target() =>
        Assert.Equal(Ask("flow batch 14 want 21 s").PlainText, Ask("flow batch 14 want ford4 21 s").PlainText);

    [Fact]
    public void A_trace_behind_want_is_the_target()
    {
        Assert.Contains("no such reading of this mixture", studio.Say("flow batch 14 want trace 2 s").Reply.PlainText, StringComparison.Ordinal);
        Tells("batch 14 trace 3 s 20C");

        Assert.Contains("to trace 2 s at 20 °C.", Ask("flow batch 14 want trace 2 s").PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void Another_cup_than_the_one_read_is_refused() => Assert.Contains(
        "is another cup", studio.Say("flow ford4 40 s in 200 ml, want zahn2 30 s").Reply.PlainText, StringComparison.Ordinal);

    [Fact]
    public void Air_older_than_half_a_day_is_not_todays()
    {
        studio.Now += TimeSpan.FromHours(11);
        Assert.Contains("at 20 °C.", Ask("flow batch 14 want 20 s").PlainText, StringComparison.Ordinal);

        studio.Now += TimeSpan.FromHours(2);
        Assert.Contains("at 20 °C (assumed).", Ask("flow batch 14 want 20 s").PlainText, StringComparison.Ordinal);
    }

    private Reply Ask(string words)
    {
        var reply = studio.Say(words).Reply;
        Assert.False(reply.IsTrouble, reply.PlainText);
        Assert.True(LineBudget.Of(reply) <= LineBudget.Lines, reply.PlainText);
        return reply;
    }

    private void Tells(string words)
    {
        studio.Now += TimeSpan.FromMinutes(2);
        studio.Tells(words);
    }
}
