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
    public void A_coat_that_is_tacky_early_opens_and_closes_the_window_earlier_and_says_by_what()
    {
        var sheet = Window();
        studio.Now = studio.Now.AddHours(2.5);

        var said = studio.Hear("14 tacky");

        Assert.StartsWith("Kept with 14.\ntacky\n", said, StringComparison.Ordinal);
        Assert.Contains("2.5 h after the coat: its resin's hours learn from it.", said, StringComparison.Ordinal);
        Assert.Matches(@"By 1 own report, 0\.\d+ times the sheet's time; it closes no later\.", said);
        Assert.True(Window().OpensBy < sheet.OpensBy && Window().ClosesFrom < sheet.ClosesFrom);
    }

    [Fact]
    public void A_coat_that_is_tacky_late_opens_it_later_and_leaves_the_close()
    {
        var sheet = Window();
        studio.Now = studio.Now.AddHours(9);

        studio.Hear("14 tacky");

        Assert.True(Window().OpensBy > sheet.OpensBy);
        Assert.Equal(sheet.ClosesFrom, Window().ClosesFrom);
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
    [InlineData("tacky", CureSign.Tacky)]
    [InlineData("is tacky now", CureSign.Tacky)]
    [InlineData("Gelled.", CureSign.Gelled)]
    [InlineData("tacky?", null)]
    [InlineData("still tacky after two weeks", null)]
    public void Only_the_plain_word_is_a_sign(string note, CureSign? sign) => Assert.Equal(sign, CurePaces.SignOf(note));

    private RecoatWindow Window() => studio.Look(view => CoatReckoning.Of(14, view, Sample.Practice)!.KnownWindow!);
}
