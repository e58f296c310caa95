using StudioBot.Chat.Coats;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Coats;

namespace StudioBot.Chat.Tests.Coats;

/// <summary>In the invented studio piece 14 lies at 20 °C; by the sheet its coat opens 3 to 6 h at 21 °C (common practice).</summary>
public sealed class CurePacesTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public CurePacesTests() => Assert.True(studio.Say("coat 14 180 ml 2:1").Recorded);

    public void Dispose() => studio.Dispose();

    [Fact]
    public void A_coat_that_is_tacky_early_closes_the_window_earlier_and_says_by_what()
    {
        var sheet = Window();
        studio.Now = studio.Now.AddHours(2.5);

        var said = studio.Hear("14 tacky");

        Assert.StartsWith("14: tacky 2.5 h after the coat.\nIts resin's hours learn from it.\n", said, StringComparison.Ordinal);
        Assert.Matches(@"By 1 own report, 0\.\d+ times the sheet's time; it closes no later\.", said);
        Assert.True(Window().OpensBy == sheet.OpensBy && Window().ClosesFrom < sheet.ClosesFrom);
    }

    // Laid at 10:00.
    [Theory]
    [InlineData("14 tacky 12:20")]
    [InlineData("14 tacky 12.20")]
    [InlineData("14 tacky at 12.20")]
    [InlineData("14 tacky at 12:20")]
    [InlineData("14 is tacky, 12:20")]
    [InlineData("tacky 14 12.20")]
    [InlineData("tacky 14 today at 12:20")]
    [InlineData("14 tacky 12.20 pm")]
    public void The_hour_beside_it_counts_and_not_when_it_was_typed(string words)
    {
        studio.Now = studio.Now.AddHours(8);
        Assert.True(studio.Say(words) is { Recorded: true } late
            && late.Reply.PlainText.ReplaceLineEndings("\n").StartsWith("14: tacky 2.3 h after the coat.\nIts resin's hours learn", StringComparison.Ordinal));
        var learnt = Window();

        studio.Say("undo");
        studio.Now = LaidAt.AddHours(2).AddMinutes(20);
        studio.Hear("14 tacky");
        Assert.Equal(learnt, Window());
    }

    [Fact]
    public void Typed_after_midnight_the_hour_is_yesterdays_and_the_answer_says_so()
    {
        var sheet = Window();
        studio.Now = LaidAt.AddHours(10);                       // 20:00
        Assert.True(studio.Say("coat 15 60 ml 2:1 20C 50%", agreed: true).Recorded);
        studio.Now = studio.Now.AddHours(4).AddMinutes(20);     // 0:20

        Assert.StartsWith("15: tacky 3.8 h after the coat, yesterday 23:50.", Tells("15 tacky 23:50"), StringComparison.Ordinal);
        Assert.NotEqual(sheet, Window());
        Tells("undo");
        Assert.StartsWith("15: tacky 4 h after the coat.\n", Tells("15 tacky 0:00"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("14 tacky 12:10", "12:10 is still to come: a record is of what was. Nothing recorded.")]   // yesterday's were over twelve hours gone
    [InlineData("14 tacky 9.30", "14 was coated only today 10:00. Nothing recorded.")]
    [InlineData("14 tacky 12.80", "“12.80”")]
    [InlineData("14 tacky yesterday", "Minutes count. Nothing recorded.")]
    [InlineData("tacky 14 at the rim", "Try\n  note 14 tacky at the rim")]
    [InlineData("16 tacky", "16 has no coat; paint that is tacky is not dry yet. Nothing recorded.\nTry\n  notyet 16")]
    public void What_can_not_be_is_not_recorded_and_what_would_work_is_shown(string words, string why)
    {
        var sheet = Window();
        studio.Now = LaidAt.AddHours(2);

        var outcome = studio.Say(words);

        Assert.False(outcome.Recorded);
        Assert.Contains(why, outcome.Reply.PlainText.ReplaceLineEndings("\n"), StringComparison.Ordinal);
        Assert.Equal(sheet, Window());
    }

    [Theory]
    [InlineData("14 tacky edge lower left")]
    [InlineData("14 tacky at the rim 3 cm")]
    public void Words_behind_it_make_a_note_of_it(string words)
    {
        var sheet = Window();
        studio.Now = LaidAt.AddHours(2);

        Assert.StartsWith("Kept with 14.\n" + words[3..], Tells(words), StringComparison.Ordinal);
        Assert.Equal(sheet, Window());
    }

    [Fact]
    public void Pieces_of_one_cup_tell_once_and_are_answered_together()
    {
        Assert.True(studio.Say("coat 12 13 15 540 ml 2:1 20C 50%", agreed: true).Recorded);
        studio.Now = studio.Now.AddHours(3);
        var said = Tells("12 13 15 tacky");
        Assert.StartsWith("12, 13 and 15: tacky 3 h after the coat.", said, StringComparison.Ordinal);
        Assert.Contains("By 1 own report, ", said, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_tacky_long_after_the_sheets_hours_is_far_behind_its_middle_and_teaches_nothing()
    {
        // 14 h at 20 °C are 13 h at 21 °C (0.93 times as fast by 55 kJ/mol): over three times the middle of 3 to 6 h.
        var sheet = Window();
        studio.Now = studio.Now.AddHours(14);

        Assert.Contains("seen late, or a slip? Kept, and nothing is learnt.", Tells("14 tacky"), StringComparison.Ordinal);
        Assert.Equal(sheet, Window());
    }

    // Somebody looks after 9 h: it was so by then. Taken for the moment of opening it would make the hours of opening a fifth longer and more.
    [Fact]
    public void What_is_found_tacky_late_moves_the_window_little_and_closes_it_no_later()
    {
        var sheet = Window();
        studio.Now = studio.Now.AddHours(9);

        Assert.StartsWith("14: tacky 9 h after the coat.\nIts resin's hours learn from it.", Tells("14 tacky"), StringComparison.Ordinal);
        var late = Window();
        Assert.InRange((late.OpensBy - LaidAt) / (sheet.OpensBy - LaidAt), 1, 1.2);
        Assert.Equal(sheet.ClosesFrom, late.ClosesFrom);
    }

    // Who had looked an hour before and says so knows that it came late, and not that the look did.
    [Theory]
    [InlineData("14 not tacky")]
    [InlineData("14 not tacky yet")]
    [InlineData("note 14 still not tacky")]
    [InlineData("note 14 not yet tacky")]
    public void A_look_before_that_found_it_not_so_makes_of_a_late_report_a_slow_resin(string look)
    {
        var sheet = Window();
        studio.Now = LaidAt.AddHours(8);
        Assert.EndsWith("When it is, send 14 tacky: its resin's hours learn from both looks.", Tells(look), StringComparison.Ordinal);
        Assert.Equal(sheet, Window());
        studio.Now = LaidAt.AddHours(9);

        Assert.Contains("hours learn from it.", Tells("14 tacky"), StringComparison.Ordinal);
        var late = Window();
        Assert.InRange((late.OpensBy - LaidAt) / (sheet.OpensBy - LaidAt), 1.25, 1.5);
        Assert.Equal(sheet.ClosesFrom, late.ClosesFrom);
    }

    // One cup for both: whichever was looked at before, it is the same resin.
    [Theory]
    [InlineData(12)]
    [InlineData(14)]
    public void A_look_at_any_piece_of_a_cup_counts_for_the_cup(int looked)
    {
        studio.Now = LaidAt.AddHours(20);
        Assert.True(studio.Say("coat 12 14 180 ml 2:1 20C 50%", agreed: true).Recorded);
        var (laid, sheet) = (studio.Now, Window());
        studio.Now = laid.AddHours(8);
        Tells($"{looked} not tacky");
        studio.Now = laid.AddHours(9);
        Tells("12 14 tacky");

        Assert.InRange((Window().OpensBy - laid) / (sheet.OpensBy - laid), 1.25, 1.5);
    }

    [Theory]
    [InlineData("14 tacky not yet")]
    [InlineData("tacky 14 not yet")]
    [InlineData("tacky 14 no")]
    public void That_it_is_not_tacky_is_never_booked_as_tacky(string words)
    {
        var sheet = Window();
        studio.Now = LaidAt.AddHours(2.5);
        var said = studio.Hear(words);
        Assert.Contains("says that it is not so: keep it as a note. Nothing recorded.", said, StringComparison.Ordinal);
        Assert.Contains("note 14 not tacky", said, StringComparison.Ordinal);
        Assert.Equal(sheet, Window());
    }

    [Fact]
    public void A_look_at_a_former_coat_says_nothing_of_the_next()
    {
        studio.Now = LaidAt.AddHours(8);
        Tells("14 not tacky");
        studio.Now = studio.Now.AddHours(12);
        Assert.True(studio.Say("coat 14 180 ml 2:1 20C 50%", agreed: true).Recorded);
        var sheet = Window();
        studio.Now = LaidAt.AddHours(9);
        Tells("14 tacky");

        Assert.InRange((Window().OpensBy - LaidAt) / (sheet.OpensBy - LaidAt), 1, 1.2);      // as without any look before
    }

    [Fact]
    public void A_second_word_on_one_coat_teaches_nothing_more()
    {
        studio.Now = studio.Now.AddHours(2.5);
        studio.Hear("14 tacky");
        var learnt = Window();
        studio.Now = studio.Now.AddHours(1);

        Assert.Contains("what counts is when it was first seen", Tells("14 tacky now"), StringComparison.Ordinal);
        Assert.Equal(learnt, Window());
    }

    [Fact]
    public void It_is_taken_back_with_its_note()
    {
        var sheet = Window();
        studio.Now = studio.Now.AddHours(2);
        Assert.True(studio.Say("14 tacky").Recorded);
        Assert.NotEqual(sheet, Window());

        Assert.True(studio.Say("undo").Recorded);
        Assert.Equal(sheet, Window());
    }

    // Paint that is tacky is not dry yet: the words of another record.
    [Theory]
    [InlineData("16 still tacky")]
    [InlineData("still tacky 16")]
    public void Still_tacky_is_said_of_paint(string words) =>
        Assert.Contains("is read as notyet", studio.Hear(words), StringComparison.Ordinal);

    // Forty-one coats of the slower resin came since, and more than forty of a resin are not read.
    [Fact]
    public void What_is_noted_often_of_one_resin_does_not_crowd_out_another()
    {
        studio.Now = LaidAt.AddHours(2.5);
        Tells("14 tacky");
        for (var coat = 0; coat < 41; coat++)
        {
            studio.Tells("pour 10cm tile swipe 3 colours");
            var piece = studio.Look(view => view.Pieces.Numbers()[^1]);
            Assert.True(studio.Say($"coat {piece} 20 ml 1:1 20C 50%", agreed: true).Recorded);
            studio.Now = studio.Now.AddHours(3);
            Tells($"{piece} tacky");
        }

        Assert.Equal(1, studio.Look(view => CoatReckoning.Of(14, view, Sample.Practice)!.Pace.Reports));
    }

    [Theory]
    [InlineData("note 14 tacky edge lower left")]
    [InlineData("note 14 not tacky")]
    [InlineData("note 14 tacky 11:20")]
    [InlineData("note 16 tacky")]           // no coat on it
    public void Other_notes_teach_nothing(string words)
    {
        var sheet = Window();
        studio.Now = studio.Now.AddHours(2);
        studio.Hear(words);

        Assert.Equal(sheet, Window());
    }

    [Theory]
    [InlineData("tacky", true)]
    [InlineData("is tacky now", true)]
    [InlineData("Tacky.", true)]
    [InlineData("tacky?", false)]
    [InlineData("still tacky after two weeks", false)]
    public void Only_the_plain_word_is_a_sign(string note, bool isOne) => Assert.Equal(isOne, CurePaces.IsTacky(note));

    private string Tells(string words)
    {
        var outcome = studio.Say(words);
        Assert.True(outcome.Recorded, outcome.Reply.PlainText);
        Assert.True(LineBudget.Of(outcome.Reply) <= LineBudget.Lines, outcome.Reply.PlainText);
        return outcome.Reply.PlainText.ReplaceLineEndings("\n");
    }

    private DateTimeOffset LaidAt => studio.Look(view => CoatReckoning.Of(14, view, Sample.Practice)!.LaidAt);

    private RecoatWindow Window() => studio.Look(view => CoatReckoning.Of(14, view, Sample.Practice)!.KnownWindow!);
}
