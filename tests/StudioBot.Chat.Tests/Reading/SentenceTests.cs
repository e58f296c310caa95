using StudioBot.Chat.Reading;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading;

public sealed class SentenceTests
{
    [Theory]
    [InlineData("sand 17?")]
    [InlineData("used 20 ml white?")]
    [InlineData("should i coat 17")]
    [InlineData("is 17 dry")]
    [InlineData("17 sanded?")]
    [InlineData("can i sand 17")]
    public void A_question_never_records(string typed) => Assert.IsNotType<Heard.Told>(Sample.Listen(typed));

    [Fact]
    public void A_record_that_asks_behind_itself_stands() =>
        Assert.Equal("used 20 ml white", Told("used 20 ml white what's left?").Line);

    [Fact]
    public void A_note_may_hold_a_question() =>
        Assert.Equal("why so dull?", Told("note 17 why so dull?").Understood.Single(one => one.Key == "text").Value);

    [Theory]
    [InlineData("17 sanded", "sand 17")]
    [InlineData("#17 is sanded", "sand 17")]
    [InlineData("17 kept", "kept 17")]
    [InlineData("17 big cells lower left", "note 17 big cells lower left")]
    public void What_is_said_of_a_piece_may_begin_with_its_number(string typed, string line) =>
        Assert.Equal(line, Told(typed).Line);

    [Theory]
    [InlineData("17")]
    [InlineData("17?")]
    [InlineData("17 dry?")]
    public void A_piece_alone_or_asked_after_shows_its_record(string typed) =>
        Assert.Equal("piece 17", Asked(typed).Line);

    [Fact]
    public void A_number_that_counts_is_no_piece() =>
        Assert.Equal("amounts", Sample.Hear("6 colours bloom on my 30cm panel, amounts").Command);

    [Fact]
    public void What_another_member_did_is_agreed_to_first()
    {
        var doubtful = Assert.IsType<Heard.Doubtful>(Sample.Listen("Pia bought 1 L white 14.90"));
        Assert.Equal("is somebody else: is this Pia's record?", doubtful.Why.Why);
    }

    [Theory]
    [InlineData("how much white do we have", "stock")]
    [InlineData("where is 17", "shelf")]
    [InlineData("who owes what", "balance")]
    [InlineData("what is low", "buy")]
    public void A_question_is_known_by_its_words(string typed, string command) =>
        Assert.Equal(command, Sample.Hear(typed).Command);

    [Fact]
    public void A_record_that_is_only_guessed_waits_for_its_author() =>
        Assert.Equal("bin 17 dropped", Assert.IsType<Heard.Doubtful>(Sample.Listen("dropped 17")).Line);

    [Theory]
    [InlineData("amunts 30cm panel bloom", "“amunts” taken as amounts")]
    [InlineData("stcok white", "“stcok” taken as stock")]
    public void A_misspelt_question_is_answered(string typed, string note) => Assert.Contains(note, Asked(typed).Notes);

    [Fact]
    public void A_misspelt_record_waits_for_its_author() =>
        Assert.Equal("used 20 ml white", Assert.IsType<Heard.Doubtful>(Sample.Listen("usde 20 ml white")).Line);

    private static Phrase Told(string typed) => Assert.IsType<Heard.Told>(Sample.Listen(typed)).Said;

    private static Phrase Asked(string typed) => Assert.IsType<Heard.Asked>(Sample.Listen(typed)).Said;
}
