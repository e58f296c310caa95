using StudioBot.Chat.Coats;
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

        Assert.StartsWith("Kept with 14.\ntacky\n", said, StringComparison.Ordinal);
        Assert.Contains("2.5 h after the coat: its resin's hours learn from it.", said, StringComparison.Ordinal);
        Assert.Matches(@"By 1 own report, 0\.\d+ times the sheet's time; it closes no later\.", said);
        Assert.True(Window().OpensBy == sheet.OpensBy && Window().ClosesFrom < sheet.ClosesFrom);
    }

    [Fact]
    public void An_hour_beside_it_is_not_read_and_that_is_said()
    {
        studio.Now += TimeSpan.FromHours(3);
        var said = studio.Hear("14 tacky 12:20");
        Assert.StartsWith("Kept with 14.\ntacky 12:20\nWords only: an hour beside it is not read.", said, StringComparison.Ordinal);
        Assert.DoesNotContain("hours learn from it", said, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_tacky_long_after_the_sheets_hours_is_far_behind_its_middle_and_teaches_nothing()
    {
        // 14 h at 20 °C are 13 h at 21 °C (0.93 times as fast by 55 kJ/mol): over three times the middle of 3 to 6 h.
        var sheet = Window();
        studio.Now = studio.Now.AddHours(14);

        Assert.DoesNotContain("learn", studio.Hear("14 tacky"), StringComparison.Ordinal);
        Assert.Equal(sheet, Window());
    }

    // Somebody looks after 9 h: it was so by then. Taken for the moment of opening it would make the hours of opening a fifth longer and more.
    [Fact]
    public void What_is_found_tacky_late_moves_the_window_little_and_closes_it_no_later()
    {
        var sheet = Window();
        studio.Now = studio.Now.AddHours(9);

        Assert.Contains("9 h after the coat: its resin's hours learn from it.", studio.Hear("14 tacky"), StringComparison.Ordinal);
        var late = Window();
        Assert.InRange((late.OpensBy - LaidAt) / (sheet.OpensBy - LaidAt), 1, 1.2);
        Assert.Equal(sheet.ClosesFrom, late.ClosesFrom);
    }

    [Fact]
    public void A_second_word_on_one_coat_teaches_nothing_more()
    {
        studio.Now = studio.Now.AddHours(2.5);
        studio.Hear("14 tacky");
        var learnt = Window();
        studio.Now = studio.Now.AddHours(1);

        Assert.DoesNotContain("learn", studio.Hear("14 tacky now"), StringComparison.Ordinal);
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

    [Theory]
    [InlineData("note 14 tacky edge lower left")]
    [InlineData("note 14 not tacky")]
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

    private DateTimeOffset LaidAt => studio.Look(view => CoatReckoning.Of(14, view, Sample.Practice)!.LaidAt);

    private RecoatWindow Window() => studio.Look(view => CoatReckoning.Of(14, view, Sample.Practice)!.KnownWindow!);
}
