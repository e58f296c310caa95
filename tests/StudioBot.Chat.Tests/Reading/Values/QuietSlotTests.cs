using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class QuietSlotTests
{
    [Theory]
    [InlineData("quiet 22-8", "quiet=22:00-08:00")]
    [InlineData("quiet hours 21:30 to 7:00", "quiet=21:30-07:00")]
    [InlineData("quiet 22 to 8", "quiet=22:00-08:00")]
    [InlineData("quiet between 22 and 8", "quiet=22:00-08:00")]
    public void Quiet_hours_go_from_one_hour_to_another(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new QuietSlot(), typed));

    [Theory]
    [InlineData("quiet 25-8", "“25” is no hour: they go to 23")]
    [InlineData("quiet 21:75-8", "“21:75” is no time of day")]
    [InlineData("quiet 22", "“quiet” needs two hours: from and to")]
    public void What_no_clock_shows_is_a_slip(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new QuietSlot(), typed));
}
