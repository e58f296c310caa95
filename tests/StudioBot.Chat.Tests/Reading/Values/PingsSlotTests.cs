using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class PingsSlotTests
{
    [Theory]
    [InlineData("mute torch", "mute=torch")]
    [InlineData("mute torch, drips and ready", "mute=torch|drips|ready")]
    [InlineData("mute the torch", "mute=torch")]
    public void Pings_are_named_by_their_words(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new PingsSlot("mute"), typed));

    [Theory]
    [InlineData("mute everything", "“everything” is none of ")]
    [InlineData("mute", "“mute” needs one of ")]
    public void What_is_no_ping_is_a_slip_that_lists_them(string typed, string understood)
    {
        var read = OneSlot.Read(new PingsSlot("mute"), typed);

        Assert.StartsWith(understood, read, StringComparison.Ordinal);
        Assert.Contains("torch, drips", read, StringComparison.Ordinal);
    }
}
