using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Sharing;

/// <summary>Of the invented studio's shelf: white came on 14 Sep and 9 Nov 2026 as W-1 and W-2.</summary>
public sealed class FirstCameTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public void Dispose() => studio.Dispose();

    [Theory]
    [InlineData("used 50 ml white 1 jan 2020", "White is here since 14 Sep, not on 1 Jan 2020.")]
    [InlineData("used 50 ml white 13 sep", "White is here since 14 Sep, not on 13 Sep.")]
    [InlineData("used 50 ml white lot W-2 8 nov", "White W-2 is here since 9 Nov, not on 8 Nov.")]
    [InlineData("mix medium 100 ml 1 jan 2020", " not on 1 Jan 2020.")]
    [InlineData("batch 13 added 30 ml thinner 1 jan 2020", "Thinner is here since ")]
    [InlineData("pour 20cm panel bloom white 1 jan 2020", "White is here since 14 Sep, not on 1 Jan 2020.")]
    public void What_had_not_come_yet_is_asked_about_and_may_be_agreed_to(string words, string expected)
    {
        var reply = studio.Refuses(words);

        Assert.Contains(expected, reply.PlainText, StringComparison.Ordinal);
        Assert.EndsWith("Another day? Or was it here, and its delivery booked late?", reply.PlainText, StringComparison.Ordinal);
        var button = Assert.Single(reply.Buttons);
        Assert.True(button.Agrees);
        Assert.True(studio.Say(button.Line, agreed: true).Recorded);
    }

    [Fact]
    public void A_coat_before_its_resin_came_is_a_doubt_of_its_own()
    {
        studio.Tells("bought 500 ml hardener B 20.00 lot H-20");

        Assert.Contains(
            "Hardener B H-20 is here since 25 Nov, not on 24 Nov.",
            studio.Refuses("coat 17 180 ml 2:1 lots R-3 H-20 24 nov").PlainText,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("used 50 ml white 14 sep")]
    [InlineData("used 50 ml white lot W-2 9 nov")]
    public void The_day_it_came_is_early_enough(string words) => studio.Tells(words);
}
