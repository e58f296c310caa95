using StudioBot.Chat.Coats;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Coats;

/// <summary>In the invented studio piece 14 lies at 20 °C. By the sheet its coat can be worked for 40 min at 21 °C, and 100 g wait 30 min in a cup (from
/// memory): 43.2 and 32.4 min at 20 °C by Arrhenius with 55 kJ/mol.</summary>
public sealed class StudioGelsTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public void Dispose() => studio.Dispose();

    [Theory]
    [InlineData("14 gelled")]
    [InlineData("gelled 14")]
    [InlineData("14 has gelled")]
    [InlineData("note 14 gelled")]
    public void A_coat_that_gels_early_shortens_how_long_the_resin_flows_and_says_by_what(string words)
    {
        Coat();
        var sheet = Flows();
        studio.Now = studio.Now.AddMinutes(30);

        var said = Tells(words);

        Assert.Contains("By the sheet 43 min, as warm as it was: 13 min sooner.", said, StringComparison.Ordinal);
        Assert.Contains("By 1 own gel, 0.84 times the sheet's time; never longer.", said, StringComparison.Ordinal);
        Assert.Contains("sheet", said.Split('\n')[^1], StringComparison.Ordinal);
        Assert.Equal(0.843, Flows() / sheet, 0.001);        // summed by another program (CurePaceTests), as one report of 0.695
        Assert.Contains("flows 36 min (own)", Page("resin 30cm round 3mm 2:1"), StringComparison.Ordinal);
        var between = System.Text.RegularExpressions.Regex.Match(
            Page("resin 30cm round 3mm 2:1 gels"), @"Four of five gel between (\d+) min and (\d+) min: plan by the first\.");
        Assert.InRange(int.Parse(between.Groups[1].Value, null), 25, 35);       // 36 min over and times 1.33: less than the sheet's ln 2 apart
        Assert.InRange(int.Parse(between.Groups[2].Value, null), 37, 51);
        Assert.Contains("Flows 36 min at 20 °C, own.", studio.Hear("coat 12 180 ml 2:1 20C 50%"), StringComparison.Ordinal);
    }

    // Three that flowed on for an hour and a quarter: the sheet's 43 min are still the most one may plan with.
    [Fact]
    public void However_late_it_gels_one_plans_by_the_sheet()
    {
        foreach (var piece in new[] { 14, 12, 15 })
        {
            studio.Now = studio.Now.AddHours(12);
            Assert.True(studio.Say($"coat {piece} 180 ml 2:1 20C 50%", agreed: true).Recorded);
            studio.Now = studio.Now.AddMinutes(75);
            Tells($"{piece} gelled");
        }

        var gels = Page("resin 30cm round 3mm 2:1 gels");
        Assert.Matches(@"Four of five gel between \d+ min and .*: plan by the sheet's 43 min\.", gels);
        Assert.DoesNotContain("plan by the first", gels, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("14 gelled not yet")]
    [InlineData("gelled 14 not yet")]
    public void That_it_has_not_gelled_is_no_gel(string words)
    {
        Coat();
        var sheet = Flows();
        studio.Now = studio.Now.AddMinutes(30);
        Assert.Contains("says that it is not so: keep it as a note. Nothing recorded.", studio.Hear(words), StringComparison.Ordinal);
        Assert.Equal(sheet, Flows());
    }

    [Fact]
    public void An_hour_that_is_named_counts_and_not_when_it_was_typed()
    {
        Coat();                                             // at 10:00
        studio.Now = studio.Now.AddHours(5);

        Assert.StartsWith("14: gelled 35 min after the coat.", Tells("14 gelled 10:35"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("14 gelled 10.35")]
    [InlineData("14 gelled at 10.35")]
    [InlineData("gelled 14 10.35 am")]
    [InlineData("gelled 14 today 10.35")]
    public void A_dot_stands_for_the_colon(string words)
    {
        Coat();                                             // at 10:00
        studio.Now = studio.Now.AddHours(5);

        Assert.StartsWith("14: gelled 35 min after the coat.\n", Tells(words), StringComparison.Ordinal);
    }

    [Fact]
    public void Typed_after_midnight_the_hour_is_yesterdays_and_the_answer_says_so()
    {
        studio.Now = studio.Now.AddHours(13).AddMinutes(10);
        Coat();                                             // at 23:10
        Tells("recipe topcoat 60 ml resin A 30 ml hardener B");
        Tells("mix topcoat 60 ml");
        studio.Now = studio.Now.AddMinutes(70);             // 0:20

        Assert.StartsWith("14: gelled 40 min after the coat, yesterday 23:50.", Tells("14 gelled 23:50"), StringComparison.Ordinal);
        Assert.StartsWith("Batch 14: gelled 24 min after it was mixed, yesterday 23:34.", Tells("batch 14 gelled 23.34 21C"), StringComparison.Ordinal);
    }

    [Fact]
    public void Pieces_of_one_cup_tell_once()
    {
        Assert.True(studio.Say("coat 12 13 14 540 ml 2:1 20C 50%", agreed: true).Recorded);
        studio.Now = studio.Now.AddMinutes(30);
        var said = Tells("12 13 14 gelled");
        Assert.StartsWith("12, 13 and 14: gelled 30 min after the coat.", said, StringComparison.Ordinal);
        Assert.Contains("By 1 own gel, ", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_day_without_an_hour_is_asked_for_its_hour()
    {
        Coat();
        studio.Now = studio.Now.AddDays(1);
        var outcome = studio.Say("14 gelled yesterday");
        Assert.False(outcome.Recorded);
        Assert.Contains("Minutes count. Nothing recorded.", outcome.Reply.PlainText, StringComparison.Ordinal);
        Assert.StartsWith("14: gelled 35 min after the coat, yesterday 10:35.\n", Tells("gelled 14 yesterday 10:35"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("14 gelled 9:30", "14 was coated only today 10:00. Nothing recorded.")]
    [InlineData("14 gelled 23:30", "14 was coated only today 10:00. Nothing recorded.")]       // yesterday's
    [InlineData("14 gelled 12:30", "12:30 is still to come: a record is of what was. Nothing recorded.")]
    [InlineData("16 gelled", "16 has no coat: nothing on it gels. Nothing recorded.")]
    [InlineData("batch 13 gelled", "Batch 13 holds no resin on record. Nothing recorded.")]
    public void What_can_not_be_is_not_recorded(string words, string why)
    {
        Coat();
        studio.Now = studio.Now.AddMinutes(30);

        var outcome = studio.Say(words);

        Assert.Contains(why, outcome.Reply.PlainText, StringComparison.Ordinal);
        Assert.False(outcome.Recorded);
    }

    [Fact]
    public void A_slow_one_lengthens_nothing()
    {
        Coat();
        var sheet = Flows();
        studio.Now = studio.Now.AddMinutes(60);

        Assert.Contains(
            "17 min later.\nBy 1 own gel the sheet's time stands; never longer.", Tells("14 gelled"), StringComparison.Ordinal);
        Assert.Equal(sheet, Flows());
    }

    [Fact]
    public void What_is_far_off_is_kept_left_out_and_named()
    {
        Coat();
        studio.Now = studio.Now.AddMinutes(3);
        var sheet = Flows();

        Assert.Contains(
            "Under a third of the sheet: a hot cup, or a slip? Kept, and left out of what is learnt.", Tells("14 gelled"), StringComparison.Ordinal);
        Assert.Equal(sheet, Flows());
        Assert.Contains("Left out, three times off the sheet or more: 14 (3 min).", Page("resin 30cm round 3mm 2:1 gels"), StringComparison.Ordinal);
    }

    [Fact]
    public void Three_on_one_side_of_the_sheet_are_told()
    {
        Gel(14, 35);
        Gel(15, 33);
        var said = Gel(13, 36);

        Assert.Contains("Your last three gelled 8 min before the sheet.", said, StringComparison.Ordinal);     // 8.2, 10.2, 7.2
        Assert.Contains("Your last three gelled 8 min before the sheet.", Page("resin 30cm round 3mm 2:1 gels"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_batch_of_resin_teaches_by_how_long_the_sheets_sample_waits()
    {
        Tells("recipe topcoat 60 ml resin A 30 ml hardener B");
        Tells("mix topcoat 60 ml");                         // 40 · 1.13 + 20 · 0.98 = 64.8 g
        var sheet = Flows();
        studio.Now = studio.Now.AddMinutes(24);

        var said = Tells("batch 14 gelled 21C");

        Assert.StartsWith("Batch 14: gelled 24 min after it was mixed.\nBy the sheet 30 min, as warm as it was: 6 min sooner.", said, StringComparison.Ordinal);
        Assert.True(Flows() < sheet);
        Assert.Contains("what counts is when it was first seen", Tells("batch 14 gelled 21C"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_cup_fuller_than_the_sheets_sample_teaches_nothing_since_it_gels_sooner_by_no_simple_law()
    {
        Tells("recipe topcoat 60 ml resin A 30 ml hardener B");
        Tells("mix topcoat 180 ml");                        // 194 g
        var sheet = Flows();
        studio.Now = studio.Now.AddMinutes(14);

        Assert.Contains("left out of what is learnt: more than the sheet's 100 g in a cup", Tells("batch 14 gelled 21C"), StringComparison.Ordinal);
        Assert.Equal(sheet, Flows());
    }

    [Fact]
    public void It_is_taken_back_with_its_record()
    {
        Coat();
        var sheet = Flows();
        studio.Now = studio.Now.AddMinutes(30);
        Tells("14 gelled");
        Assert.NotEqual(sheet, Flows());

        Tells("undo");
        Assert.Equal(sheet, Flows());
    }

    [Theory]
    [InlineData("note 14 not gelled")]
    [InlineData("note 14 gelled edge lower left")]
    [InlineData("14 gelled edge lower left")]
    public void Other_notes_teach_nothing(string words)
    {
        Coat();
        var sheet = Flows();
        studio.Now = studio.Now.AddMinutes(20);
        Tells(words);

        Assert.Equal(sheet, Flows());
    }

    private void Coat() => Tells("coat 14 180 ml 2:1");

    private string Gel(int piece, double minutes)
    {
        Assert.True(studio.Say($"coat {piece} 60 ml 2:1 20C 50%", agreed: true).Recorded);
        studio.Now = studio.Now.AddMinutes(minutes);
        return Tells($"{piece} gelled");
    }

    private double Flows() => studio.Look(view => StudioGels.Of(new Studio(view, Sample.Practice, isSample: false)).Pace(Sample.Practice.UsualResin).Shortened);

    private string Page(string words)
    {
        var reply = studio.Say(words).Reply;
        Assert.True(LineBudget.Of(reply) <= LineBudget.Lines, reply.PlainText);
        return reply.PlainText.ReplaceLineEndings("\n");
    }

    private string Tells(string words)
    {
        var outcome = studio.Say(words);
        Assert.True(outcome.Recorded, outcome.Reply.PlainText);
        Assert.True(LineBudget.Of(outcome.Reply) <= LineBudget.Lines, outcome.Reply.PlainText);
        return outcome.Reply.PlainText.ReplaceLineEndings("\n");
    }
}
