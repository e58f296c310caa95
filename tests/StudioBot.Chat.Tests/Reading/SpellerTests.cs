using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading;

public sealed class SpellerTests
{
    [Fact]
    public void A_question_is_answered_as_the_nearest_word_and_says_so() =>
        Assert.Contains("“blom” taken as bloom", Said("amounts 30cm panel blom 6 colours").Notes);

    [Fact]
    public void A_name_of_several_words_is_mended_in_any_of_them() =>
        Assert.Equal("used 20 ml lamp black", ((Heard.Doubtful)Sample.Listen("used 20 ml lamp blck")).Line);

    [Fact]
    public void A_corrected_record_waits_for_its_author() =>
        Assert.Equal(
            "is not a word here; lamp is the nearest",
            ((Heard.Doubtful)Sample.Listen("used 20 ml lanp black")).Why.Why);

    [Theory]
    [InlineData("amounts 30cm panel bloom six colours")]     // a number in words
    [InlineData("amounts 30cm panel bloom please")]          // a word that says nothing
    public void What_is_right_is_left_alone(string typed) =>
        Assert.DoesNotContain(Said(typed).Notes, note => note.Contains("taken as", StringComparison.Ordinal));

    private static StudioBot.Chat.Reading.Phrase Said(string typed) => ((Heard.Asked)Sample.Listen(typed)).Said;
}
