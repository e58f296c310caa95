using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.House;

public sealed class MembersForgetTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Empty();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void Forgetting_is_asked_first()
    {
        var reply = studio.Say("members forget Pia").Reply;

        Assert.True(reply.IsTrouble);
        Assert.True(Assert.Single(reply.Buttons) is { Line: "members forget Pia", Agrees: true });
        Assert.Contains("Pia", Names());
    }

    [Fact]
    public void The_name_goes_and_what_was_booked_stays()
    {
        studio.Say("room 20C 58%", by: "Pia");
        var outcome = studio.Say("members forget pia", agreed: true);

        Assert.StartsWith("Forgotten.", outcome.Reply.PlainText, StringComparison.Ordinal);
        Assert.DoesNotContain("Pia", Names());
        Assert.Empty(outcome.Reply.Buttons);                       // no undo brings a name back
        Assert.DoesNotContain("Pia", studio.Look(view => string.Join('\n', view.Acts.Recent(null, studio.Now))), StringComparison.OrdinalIgnoreCase);
        Assert.Single(studio.Look(view => view.Rooms.Current()));
    }

    [Fact]
    public void Who_left_before_can_be_forgotten()
    {
        studio.Say("leave", by: "Pia", agreed: true);
        studio.Say("members forget Pia", agreed: true);

        Assert.DoesNotContain("Pia", Names());
    }

    [Theory]
    [InlineData("members forget Nobodyatall", "Mira", "no member here")]
    [InlineData("members forget Mira", "Mira", "last steward")]
    [InlineData("members forget", "Mira", "needs a member's name")]
    [InlineData("members forget Mira", "Pia", "Only a steward")]
    public void Not_everybody_can_be_forgotten_by_everyone(string words, string by, string why)
    {
        Assert.Contains(why, studio.Hear(words, by, agreed: true), StringComparison.Ordinal);
        Assert.Equal(["Mira", "Pia"], Names());
    }

    private List<string> Names() => studio.Look(view => view.Members.Names().Values.Order().ToList());
}
