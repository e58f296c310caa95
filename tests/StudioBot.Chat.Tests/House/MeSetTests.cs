using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Units;
using StudioBot.Records.Reminders;

namespace StudioBot.Chat.Tests.House;

public sealed class MeSetTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Empty();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void Units_are_ones_own()
    {
        Assert.Equal("Your units: US.", studio.Hear("me units us", by: "Pia"));

        Assert.Equal(
            [null, UnitSystem.Us],
            studio.Look(view => view.Members.All().Select(member => member.Units).ToList()));
    }

    [Theory]
    [InlineData("me quiet 22-8", "Your quiet hours: 22:00 to 8:00.", 22, 0, 8)]
    [InlineData("me quiet hours 21:30 to 7:00", "Your quiet hours: 21:30 to 7:00.", 21, 30, 7)]
    [InlineData("me quiet 0-0", "Your quiet hours: none.", 0, 0, 0)]
    public void Quiet_hours_are_ones_own(string words, string says, int hour, int minute, int until)
    {
        Assert.Equal(says, studio.Hear(words, by: "Pia"));
        Assert.Equal(new QuietTimes(new TimeOnly(hour, minute), new TimeOnly(until, 0)), Of("Pia").Quiet);
        Assert.Null(Of("Mira").Quiet);
    }

    [Fact]
    public void Pings_are_switched_off_and_on_by_their_words()
    {
        Assert.Equal("Off for you: torch, drips.", studio.Hear("me mute torch and drips"));
        Assert.Equal("Off for you: torch.", studio.Hear("me mute torch"));
        Assert.Equal(["Drips", "Torch"], Of("Mira").Unwanted);
        Assert.Equal("On for you: torch.", studio.Hear("me unmute torch"));
        Assert.Equal(["Drips"], Of("Mira").Unwanted);
    }

    [Fact]
    public void One_asks_to_be_woken_and_not_to_be()
    {
        studio.Say("me wake on");
        Assert.True(Of("Mira").Woken);
        studio.Say("me wake off");
        Assert.False(Of("Mira").Woken);
    }

    [Fact]
    public void One_message_sets_several_and_undo_takes_all_back()
    {
        Assert.Equal(
            "Your units: imperial.\nYour quiet hours: 21:00 to 9:00.\nOff for you: torch.",
            studio.Hear("me units imperial quiet 21-9 mute torch"));
        studio.Say("undo");

        Assert.Empty(Of("Mira").Unwanted);
        Assert.Null(Of("Mira").Quiet);
        Assert.Null(studio.Look(view => view.Members.All())[0].Units);
    }

    [Theory]
    [InlineData("me mute everything", "“everything” is none of")]
    [InlineData("me mute", "“mute” needs one of")]
    [InlineData("me quiet 25-8", "is no hour: they go to 23")]
    public void What_is_not_understood_is_named_and_nothing_recorded(string words, string why)
    {
        var reply = studio.Say(words).Reply;

        Assert.True(reply.IsTrouble);
        Assert.Contains(why, reply.PlainText, StringComparison.Ordinal);
        Assert.Contains("Nothing recorded.", reply.PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void A_misspelt_ping_is_agreed_to_first()
    {
        var reply = studio.Say("me mute torhc").Reply;

        Assert.Equal("me mute torch", Assert.Single(reply.Buttons).Line);
        Assert.Empty(Of("Mira").Unwanted);
    }

    private Wishes Of(string name) => studio.Look(view =>
        view.Wishes.Of(view.Members.All().First(member => member.Name == name).Id));
}
