using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading;

/// <summary>A name that nobody and nothing here bears is said to be none, and nothing is recorded.</summary>
public sealed class UnknownsTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public void Dispose() => studio.Dispose();

    [Theory]
    [InlineData("used 30 ml white for Tom", "Tom")]
    [InlineData("used 30 ml white by Tom yesterday", "Tom")]
    [InlineData("pour 20cm panel swipe white for Marta", "Marta")]
    public void Whom_nobody_knows_is_no_member(string words, string name) => Refused(words, $"“{name}” is no member here. Nothing recorded.");

    [Theory]
    [InlineData("used 30 ml white for Tomas")]
    [InlineData("coat 17 50 A 25 B for Tomas")]
    [InlineData("used 30 ml white for tomas")]
    public void Who_left_is_no_member(string words)
    {
        studio.File.Write(session => session.Members.Leave(
            session.Members.All().Single(one => one.Name == "Tomas").Id,
            session.Acts.Begin(new Records.Acts.NewAct("leave", session.Members.All()[0], "leave", studio.Now))));
        Refused(words, "omas” is no member here. Nothing recorded.");
    }

    [Theory]
    [InlineData("used 30 ml white for a customer")]
    [InlineData("used 30 ml white for 17")]
    [InlineData("used 30 ml white for practice")]
    [InlineData("used 30 ml white for Easter market")]
    [InlineData("USED 30 ML WHITE FOR PRACTICE")]
    [InlineData("used 30 ml white, spilled it over the floor")]
    [InlineData("room 23C 45% after airing")]
    [InlineData("pour 30cm panel bloom white, lamp black, 318 ml in all")]
    public void A_purpose_is_a_remark(string words) => Assert.True(studio.Say(words).Recorded, words);

    [Theory]
    [InlineData("room cellar 23C 45%", "“cellar” is no room here. Nothing recorded.")]
    [InlineData("room 23C 45% cellar", "“cellar” is no room here. Nothing recorded.")]
    [InlineData("room 23C 45% in the cellar", "“cellar” is no room here. Nothing recorded.")]
    [InlineData("used 20 ml white, cola", "“cola” is no material of this studio. Nothing recorded.")]
    [InlineData("used 20 ml white and cola", "“cola” is no material of this studio. Nothing recorded.")]
    [InlineData("pour 30cm panel bloom white, purple glitter", "“purple glitter” is no material of this studio. Nothing recorded.")]
    [InlineData("pour 30cm panel bloom 50 ml white, 20 ml cola", "“cola” is no material of this studio. Nothing recorded.")]
    public void What_the_studio_has_not_is_named(string words, string trouble) => Refused(words, trouble);

    [Fact]
    public void The_same_message_about_a_room_that_is_here_is_shown() =>
        Assert.Contains("room cupboard 23C 45%", studio.Hear("room cellar 23C 45%"), StringComparison.Ordinal);

    private void Refused(string words, string trouble)
    {
        var said = studio.Say(words);
        Assert.Contains(trouble, said.Reply.PlainText.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.False(said.Recorded);
    }
}
