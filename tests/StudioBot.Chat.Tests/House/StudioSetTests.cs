using StudioBot.Chat.Tests.Support;
using StudioBot.Records.House;

namespace StudioBot.Chat.Tests.House;

public sealed class StudioSetTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Empty();

    public void Dispose() => studio.Dispose();

    [Theory]
    [InlineData("studio scoop 25 ml", "A scoop: 25 ml.", "25 ml")]
    [InlineData("studio currency GBP", "Currency: GBP. Sums told before keep their figures.", "GBP")]
    [InlineData("studio quiet 23-7:30", "Quiet hours: 23:00 to 7:30, for all who set none of their own.", "23:00 to 7:30")]
    [InlineData("studio zone america/new_york", "Zone: America/New_York. Reminders asked for before keep their moment.", "America/New_York")]
    [InlineData("studio zone sydney", "Zone: Australia/Sydney. Reminders asked for before keep their moment.", "Australia/Sydney")]
    [InlineData("studio name The Pour House no. 2", "Name: The Pour House no. 2.", "The Pour House no. 2")]
    public void What_is_set_is_said_and_shown(string words, string says, string shown)
    {
        Assert.Equal(says, studio.Hear(words));
        Assert.Contains(shown, studio.Hear("studio"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_new_zone_tells_the_time_from_then_on()      // 9:00 UTC is 4:00 in New York in November
    {
        studio.Say("studio zone America/New_York");

        Assert.StartsWith("I remind you Wed 25 Nov 6:00", studio.Hear("remind me in 2h torch"), StringComparison.Ordinal);
    }

    [Fact]
    public void One_message_sets_several_and_undo_takes_all_back()
    {
        var before = Settings();
        studio.Say("studio scoop 25 ml currency CHF quiet 20-9");
        Assert.NotEqual(before, Settings());
        studio.Say("undo");

        Assert.Equal(before, Settings());
        Assert.Contains("22:00 to 8:00", studio.Hear("studio"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("studio zone Nowhere/Land", "“Nowhere/Land” is no time zone")]
    [InlineData("studio zone ../../etc/passwd", "is no time zone")]
    [InlineData("studio zone", "needs a city")]
    [InlineData("studio scoop 0 ml", "is nothing: above zero")]
    [InlineData("studio scoop 5 L", "holds a litre at most")]
    [InlineData("studio name", "needs a name")]
    public void What_can_not_be_set_is_named_and_nothing_recorded(string words, string why)
    {
        var before = Settings();
        var reply = studio.Say(words).Reply;

        Assert.True(reply.IsTrouble);
        Assert.Contains(why, reply.PlainText, StringComparison.Ordinal);
        Assert.Equal(before, Settings());
    }

    [Fact]
    public void Only_a_steward_sets_it() => Assert.True(studio.Say("studio scoop 25 ml", by: "Pia").Reply.IsTrouble);

    private StudioSettings Settings() => studio.Look(view => view.Studio.Settings())!;
}
