using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Sharing;

public sealed class UndoCommandTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void In_a_group_nothing_written_elsewhere_is_named()
    {
        studio.Say("used 20 ml white");
        Assert.DoesNotContain("20 ml", Shelves.Words(studio.Say("/undo list", chat: ChatKind.Group).Reply), StringComparison.Ordinal);
        var refused = studio.Say("/undo", chat: ChatKind.Group);
        Assert.False(refused.Recorded);
        Assert.Contains("in private", refused.Reply.PlainText, StringComparison.Ordinal);
        Assert.DoesNotContain("20 ml", refused.Reply.PlainText, StringComparison.Ordinal);

        studio.Say("/used 5 ml white", chat: ChatKind.Group);
        Assert.Contains("5 ml white", Shelves.Words(studio.Say("/undo list", chat: ChatKind.Group).Reply), StringComparison.Ordinal);
        Assert.True(studio.Say("/undo", chat: ChatKind.Group).Recorded);
        Assert.True(studio.Say("undo").Recorded);
    }

    [Fact]
    public void Each_of_two_records_in_one_message_is_taken_back_by_its_own_words()
    {
        var both = studio.Say("used 20 ml white\nroom 20C 58%", agreed: true);
        Assert.True(both.Recorded, both.Reply.PlainText);
        var told = studio.Hear(both.Reply.Buttons.Single(button => button.Label == "Undo 1").Line);
        Assert.Contains("white", told, StringComparison.Ordinal);
        Assert.DoesNotContain("room", told, StringComparison.Ordinal);
    }

    [Fact]
    public void For_whom_it_was_recorded_hears_of_it()
    {
        studio.Say("used 20 ml white for Tomas");
        var aside = Assert.Single(studio.Say("undo").Asides);
        Assert.Equal("Tomas", aside.To.Name);
        Assert.Contains("took back what was recorded for you", aside.Reply.PlainText, StringComparison.Ordinal);
    }
}
