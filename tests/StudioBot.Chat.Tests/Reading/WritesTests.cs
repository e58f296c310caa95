using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading;

public sealed class WritesTests
{
    [Theory]
    [InlineData("used 20 ml white\nused 5 ml lamp black")]
    [InlineData("used 20 ml white\n5 ml lamp black")]
    [InlineData("used 20 ml white, used 5 ml lamp black")]
    public void Records_under_one_word_are_one(string typed)
    {
        var said = Assert.IsType<Heard.Told>(Sample.Listen(typed)).Said;
        Assert.Equal("used 20 ml white, 5 ml lamp black", said.Line);
    }

    [Fact]
    public void Two_kinds_of_record_wait_for_one_button()
    {
        var doubtful = Assert.IsType<Heard.Doubtful>(Sample.Listen("used 20 ml white and weigh 17 318.4 g"));
        Assert.Equal("used 20 ml white\nweigh 17 318.4 g", doubtful.Line);
        Assert.Equal(2, doubtful.Said.Count);
    }

    [Theory]
    [InlineData("used 20 ml white\nweigh 17 zorks", "weigh")]
    [InlineData("used 20 zorks white\nweigh 17 318.4 g", "used")]
    public void Of_several_lines_all_are_recorded_or_none(string typed, string wrong) =>
        Assert.Equal(wrong, Assert.IsType<Heard.Unread>(Sample.Listen(typed)).Command);

    [Fact]
    public void The_button_records_what_the_two_lines_say()
    {
        var doubtful = Assert.IsType<Heard.Doubtful>(Sample.Listen("used 20 ml white and weigh 17 318.4 g"));
        var again = Assert.IsType<Heard.Doubtful>(Sample.Listen(doubtful.Line));
        Assert.Equal(doubtful.Line, again.Line);
    }
}
