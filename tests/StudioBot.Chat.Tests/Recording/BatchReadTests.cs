using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Flow;

namespace StudioBot.Chat.Tests.Recording;

/// <summary>Figures are worked by hand: a Ford 4 tells 3.85·(t − 4.49) mm²/s (ASTM D1200); medium is three parts of neutral base and one of
/// gloss varnish.</summary>
public sealed class BatchReadTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public BatchReadTests() => Tells("mix medium 400 ml");    // batch 14

    public void Dispose() => studio.Dispose();

    [Fact]
    public void A_cups_seconds_are_kept_with_the_batch_and_how_warm_it_was()
    {
        var said = Tells("batch 14 ford4 22 s 21C");

        Assert.StartsWith("Batch 14: Ford 4 22 s at 21 °C, 67 mm²/s.", said, StringComparison.Ordinal);
        var kept = Assert.Single(Flows());
        Assert.Equal((14, "medium", 22d, 21d), (kept.Batch, kept.Recipe, kept.Reading.Seconds.TotalSeconds, kept.Reading.At!.Value.Celsius));
        Assert.Equal("ford4", Assert.IsType<FlowReading.OfCup>(kept.Reading).Cup.Name);
    }

    [Theory]
    [InlineData("batch 14 trace 1.5 s")]
    [InlineData("batch 14 1.5 s trace")]
    [InlineData("batch 14 1.5s")]
    [InlineData("batch 14 trace 1,5 s")]
    public void A_trace_is_kept_too(string words)
    {
        Assert.StartsWith("Batch 14: trace 1.5 s", Tells(words), StringComparison.Ordinal);
        Assert.Equal(1.5, Assert.IsType<FlowReading.OfTrace>(Assert.Single(Flows()).Reading).Seconds.TotalSeconds);
    }

    [Fact]
    public void What_is_read_while_mixing_is_kept_with_the_new_batch()
    {
        Assert.Contains("Kept with it: Ford 4 24 s at 20 °C.", Tells("mix medium 200 ml ford4 24 s 20C"), StringComparison.Ordinal);

        Assert.Equal((15, 24d), (Flows()[^1].Batch, Flows()[^1].Reading.Seconds.TotalSeconds));
    }

    [Fact]
    public void Unless_it_is_said_it_is_as_warm_as_the_room_was_within_half_a_day()
    {
        Tells("room 19C 50%");
        studio.Now += TimeSpan.FromHours(11);
        Assert.StartsWith("Batch 14: Ford 4 22 s at 19 °C", Tells("batch 14 ford4 22 s"), StringComparison.Ordinal);

        studio.Now += TimeSpan.FromHours(2);
        Assert.Contains("Nobody read how warm it was", Tells("batch 14 ford4 23 s"), StringComparison.Ordinal);
        Assert.Null(Flows()[^1].Reading.At);
    }

    [Theory]
    [InlineData("batch 14 ford4 12 s", "12 s", "batch 14 ford1 94 s")]    // ASTM D1200: a Ford 4 tells 20 to 100 s; 28.9 mm²/s drains a Ford 1 in 94 s
    [InlineData("batch 14 ford4 22 s trace 1.5 s", "", "batch 14 ford4 22 s")]
    [InlineData("batch 14 21C", "", "batch 14 ford4 22 s 21C")]
    public void A_reading_that_says_nothing_is_not_recorded_and_told_what_would_work(string words, string at, string works)
    {
        var error = studio.Look(view => Sample.Conversation.Hear(
            Sample.Turn(words), new Studio(view, Sample.Practice, isSample: false)));

        var line = HeardLine.From(error);
        Assert.Equal(("error", at), (line.Kind, line.Error!.Word));
        Assert.Equal(works, line.Error.Try);
        Assert.Empty(Flows());
    }

    [Theory]
    [InlineData("batch 14 frod4 24 s", "frod4", "batch 14 ford4 24 s")]
    [InlineData("batch 14 ford 22 s", "ford", "batch 14 ford4 22 s")]          // the Ford 4 is paint's (common practice)
    [InlineData("batch 14 frod 4 22 s", "frod 4", "batch 14 ford4 22 s")]
    [InlineData("mix medium 200 ml frod4 22 s 21C", "frod4", "mix medium 200 ml ford4 22 s 21C")]
    [InlineData("batch 14 22 s lumpy", "lumpy", "batch 14 trace 22 s lumpy")]
    [InlineData("mix medium 400 ml want ford4 22 s", "want", "mix medium 400 ml")]
    [InlineData("mix medium 400 ml, need 2 s", "need", "mix medium 400 ml")]
    [InlineData("batch 14 want ford4 22 s", "want", "flow batch 14 want ford4 22 s")]
    [InlineData("batch 14 ford4 30 s need 22 s", "need", "flow batch 14 need 22 s")]
    [InlineData("batch 14 22 s wanted", "wanted", "flow batch 14 want 22 s")]
    [InlineData("batch 14 ford4", "", "batch 14 ford4 22 s")]
    [InlineData("batch 14 zahn2", "", "batch 14 zahn2 20 s")]                  // ASTM D4212: a Zahn 2 tells from 20 s on
    [InlineData("batch 14 trace", "trace", "batch 14 trace 1.5 s")]
    [InlineData("batch 14 trace 1.5", "1.5", "batch 14 trace 1.5 s")]
    [InlineData("mix medium 400 ml trace 1.5", "1.5", "mix medium 400 ml trace 1.5 s")]
    public void What_may_be_no_reading_is_asked_and_nothing_recorded(string words, string at, string works)
    {
        var said = studio.Refuses(words).PlainText;

        Assert.Contains(at, said, StringComparison.Ordinal);
        Assert.EndsWith(works, said.TrimEnd(), StringComparison.Ordinal);
        Assert.Empty(Flows());
        Assert.Equal(14, studio.Look(view => view.Batches.All().Count));
    }

    [Fact]
    public void A_misspelt_cup_is_named_with_the_one_it_is_nearest_to() => Assert.Contains(
        "“frod4” did you mean ford4?", studio.Refuses("batch 14 frod4 24 s").PlainText, StringComparison.Ordinal);

    [Fact]
    public void A_remark_behind_what_was_named_is_kept_as_one()
    {
        Assert.StartsWith("Batch 14: Ford 4 22 s", Tells("batch 14 ford4 22 s lumpy"), StringComparison.Ordinal);
        Assert.StartsWith("Batch 14: trace 2 s", Tells("batch 14 trace 2 s lumpy"), StringComparison.Ordinal);
        Assert.StartsWith("Batch 14: trace 3 s", Tells("batch 14 3 s yesterday"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_page_of_a_batch_is_shown_without_a_reading_only()
    {
        Assert.StartsWith("Batch 14, medium", studio.Say("batch 14").Reply.PlainText, StringComparison.Ordinal);
        Assert.True(studio.Say("batch 14 ford4?").Reply.IsTrouble);
    }

    [Fact]
    public void A_batch_that_is_gone_takes_no_reading()
    {
        Tells("batch 14 bin sour");

        Assert.StartsWith(
            "Nothing is left of batch 14. Nothing recorded.", studio.Refuses("batch 14 ford4 22 s").PlainText, StringComparison.Ordinal);
        Assert.Empty(Flows());
    }

    [Fact]
    public void It_is_taken_back_and_holds_the_mixing_while_it_stands()
    {
        Tells("batch 14 ford4 22 s");
        Assert.True(studio.Say("undo").Recorded);
        Assert.Empty(Flows());

        studio.Now += TimeSpan.FromMinutes(2);
        Tells("batch 14 ford4 23 s", "Pia");
        Assert.False(studio.Say("undo").Recorded);
        Assert.Single(Flows());
    }

    [Fact]
    public void Readings_around_an_addition_say_how_it_thins()
    {
        // 136.7 → 102.1 mm²/s by 20 ml in 420: ln(102.1/136.7)/(20/420) = −6.1, pulled towards −5 as two readings say little
        Assert.Contains("Read it again after something was added", Tells("batch 14 ford4 40 s 20C"), StringComparison.Ordinal);
        Tells("batch 14 added 20 ml thinner");
        Assert.Matches(@"1 % more thinner takes 5\.\d % off, by your 2 readings since today \(common practice 4\.9 %\)", Tells("batch 14 ford4 31 s 20C"));
    }

    [Fact]
    public void A_slip_is_kept_named_and_left_out()
    {
        foreach (var seconds in new[] { 40, 41, 39, 40 })
        {
            Tells($"mix medium 100 ml ford4 {seconds} s 20C");
        }

        Assert.Contains("a slip?", Tells("batch 14 ford5 80 s 20C"), StringComparison.Ordinal);     // 12.1·78 = 944 mm²/s
    }

    [Fact]
    public void A_digit_too_many_is_kept_named_and_counted_as_meant()
    {
        foreach (var seconds in new[] { 40, 41, 39, 40 })
        {
            Tells($"mix medium 100 ml trace {seconds / 20.0} s 20C");
        }

        Assert.Contains("a digit slipped?", Tells("batch 14 trace 20 s 20C"), StringComparison.Ordinal);
        Assert.Contains("A digit off, and mended: of batch 14.", studio.Hear("flow batch 14 want 3 s trace"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_in_a_batch_older_than_the_books_nobody_knows() => Assert.Contains(
        "nothing is learnt from it", Tells("batch 12 ford4 22 s"), StringComparison.Ordinal);

    private IReadOnlyList<Records.Recipes.BatchFlow> Flows() => studio.Look(view => view.Batches.Flows(80));

    private string Tells(string words, string by = "Mira")
    {
        studio.Now += TimeSpan.FromMinutes(2);
        return studio.Tells(words, by);
    }
}
