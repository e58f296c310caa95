using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class DurationSlotTests
{
    [Theory]
    [InlineData("90 min", "duration_min=90")]
    [InlineData("2h", "duration_min=120")]
    [InlineData("in 2 hours", "duration_min=120")]
    [InlineData("half an hour", "duration_min=30")]
    [InlineData("a week", "duration_min=10080")]
    public void How_long_comes_out_in_minutes(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new DurationSlot(), typed));

    [Theory]
    [InlineData("0 min", "“0 min” is no time: above zero")]
    [InlineData("600 days", "“600 days” is longer than a year")]
    public void Nothing_and_ages_are_slips(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new DurationSlot(), typed));

    [Theory]
    [InlineData("2 days", "days=2")]
    [InlineData("a week", "days=7")]
    [InlineData("12 h", "duration_min=720; days=0.5")]
    public void Waiting_is_counted_in_days(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new DurationSlot { InDays = true }, typed));
}
