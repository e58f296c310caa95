using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.House;

public sealed class MeShowTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Empty();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void Who_has_set_nothing_has_the_studios() => Assert.Equal(
        """
        Pia, member
        Units         metric (studio)
        Quiet  22:00 to 8:00 (studio)
        No ping is switched off.
        Set with
          me quiet 22-8
          me mute torch
        """.ReplaceLineEndings("\n"),
        studio.Hear("me", by: "Pia"));

    [Fact]
    public void What_one_has_set_is_shown()
    {
        studio.Say("studio quiet 23-7");
        studio.Say("me units us mute torch ready wake on", by: "Pia");

        var shown = studio.Hear("me", by: "Pia");
        Assert.Contains("US", shown, StringComparison.Ordinal);
        Assert.Contains("23:00 to 7:00 (studio)", shown, StringComparison.Ordinal);
        Assert.Contains("wakes you", shown, StringComparison.Ordinal);
        Assert.Contains("Switched off: ready, torch.", shown, StringComparison.Ordinal);
        Assert.Contains("No ping is switched off.", studio.Hear("me"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_longest_of_it_fits_a_phone()
    {
        studio.Say("me quiet 22:30-10:30 mute torch drips ready weigh opens closes asked");

        var reply = studio.Say("me").Reply;
        Assert.True(LineBudget.FiguresFit(reply), reply.PlainText);
        Assert.True(LineBudget.Of(reply) <= LineBudget.Lines, reply.PlainText);
    }
}
