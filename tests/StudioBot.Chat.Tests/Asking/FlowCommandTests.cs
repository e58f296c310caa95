using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Asking;

public sealed class FlowCommandTests
{
    [Theory]
    [InlineData("flow ford4 22 s", "67.4 mm²/s")]           // 3.85·(22 − 4.49), ASTM D1200
    [InlineData("flow iso4 31 s", "36 mm²/s")]              // 1.37·31 − 200/31, ISO 2431
    [InlineData("flow zahn #2 27 seconds", "45.5 mm²/s")]   // 3.5·(27 − 14), ASTM D4212
    public void Seconds_of_a_cup_become_a_viscosity(string words, string expected) =>
        Assert.Contains(expected, Sample.Answer(words)!.PlainText, StringComparison.Ordinal);

    [Fact]
    public void A_Zahn_cup_says_how_roughly_it_repeats() =>     // ASTM D4212
        Assert.Contains("11 %", Sample.Answer("flow zahn2 27 s")!.PlainText, StringComparison.Ordinal);

    [Theory]
    // ASTM D1200: a Ford 4 tells 20 to 100 s; 28.9 mm²/s drains a Ford 1 in 94 s
    [InlineData("flow ford4 1 s", "1 s", "Ford 1")]
    [InlineData("flow ford4 12 s", "12 s", "Ford 1")]
    [InlineData("flow ford4 130 s", "130 s", "Ford 5")]
    [InlineData("flow ford4 40 s in 200 ml, added 10 ml thinner, now 31 s, want 10 s", "10 s", "Ford")]
    public void Seconds_that_a_cup_cannot_tell_are_pointed_at_with_a_cup_that_can(string words, string at, string cup)
    {
        var error = Sample.Hear(words).Error!;

        Assert.Equal(at, error.Word);
        Assert.Contains(cup, error.Why, StringComparison.Ordinal);
        Assert.Equal("ask", Sample.Hear(error.Try).Kind);
    }

    [Fact]
    public void Two_readings_say_how_much_more_with_a_range_and_a_step_to_measure()
    {
        // by shares 1.91 mL, by millilitres 1.31 mL, of which a syringe measures 1
        var text = Sample.Answer("flow have 15 ml 0.5s, added 5 ml medium now 1.5s, want 2s")!.PlainText;

        Assert.Contains("Add 1.9 ml more medium", text, StringComparison.Ordinal);
        Assert.Contains("1.3 ml to 1.9 ml", text, StringComparison.Ordinal);
        Assert.Matches(@"First step +1 ml", text);
    }

    [Fact]
    public void Cup_seconds_are_readings_where_a_target_stands() =>     // 11.62 mL by ASTM D1200 and log-linear mixing
        Assert.Contains(
            "Add 11.6 ml more thinner",
            Sample.Answer("flow ford4 40 s in 200 ml, added 10 ml thinner, now 31 s, want 24 s")!.PlainText,
            StringComparison.Ordinal);

    [Fact]
    public void A_target_that_was_passed_takes_the_first_liquid_back() =>   // 10/φ* − 110 = 64.3 mL
        Assert.Contains(
            "Add 64 ml of what was in it first",
            Sample.Answer("flow have 100 ml 3 s, added 10 ml thinner, now 1 s, want 1.5 s")!.PlainText,
            StringComparison.Ordinal);

    [Fact]
    public void Readings_that_went_the_wrong_way_give_no_figure()
    {
        // medium raises a trace (common practice)
        var reply = Sample.Answer("flow have 15 ml 1.5s, added 5 ml medium now 0.5s, want 2s")!;

        Assert.True(reply.IsTrouble);
        Assert.Contains("swapped", reply.PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void One_reading_gets_a_first_try_and_no_total()
    {
        var reply = Sample.Answer("too thick: 2.5s trace in 200 ml, want 1s")!;
        var next = reply.Blocks.OfType<Chat.Replies.Block.Sample>().Single().Text;

        Assert.Contains("Add 10 ml thinner", reply.PlainText, StringComparison.Ordinal);
        Assert.Equal("flow", Sample.Hear(next).Command);
    }

    [Theory]
    [InlineData("flow")]
    [InlineData("flow ford4")]
    [InlineData("flow 1.5 s trace")]
    [InlineData("flow 15 ml 0.5s, now 1.5s, want 2s")]
    public void What_is_missing_is_said_with_a_message_that_works(string words)
    {
        var error = Sample.Hear(words).Error!;

        Assert.Contains("missing", error.Why, StringComparison.Ordinal);
        Assert.Equal("ask", Sample.Hear(error.Try).Kind);
    }
}
