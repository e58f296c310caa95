using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Recording;

/// <summary>Nothing happens to a piece before it is poured, and it does not lose a twentieth in ten minutes.</summary>
public sealed class BeforeThePourTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public void Dispose() => studio.Dispose();

    [Theory]
    [InlineData("dry 17 1 jan")]
    [InlineData("notyet 17 1 jan")]
    [InlineData("coat 17 180 ml 2:1 1 jan")]
    [InlineData("left 40 ml from 17 1 jan")]
    public void A_moment_before_the_pour_is_refused(string words)
    {
        var said = studio.Say(words);
        Assert.StartsWith("17 was poured only ", said.Reply.PlainText, StringComparison.Ordinal);
        Assert.False(said.Recorded);
    }

    [Fact]
    public void A_sudden_change_of_weight_is_agreed_to()
    {
        studio.Say("weigh 17 318.4 g");
        studio.Now = studio.Now.AddMinutes(5);

        // 318.4 × 0.95 = 302.48
        Assert.True(studio.Say("weigh 17 302.4 g").Reply.IsTrouble);
        Assert.True(studio.Say("weigh 17 302.4 g", agreed: true).Recorded);
        studio.Now = studio.Now.AddMinutes(5);
        Assert.True(studio.Say("weigh 17 302.5 g").Recorded);
    }
}
