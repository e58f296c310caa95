using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class MoneySlotTests
{
    [Theory]
    [InlineData("24.90", "money=24.9")]
    [InlineData("24,90", "money=24.9")]
    [InlineData("€85,50", "money=85.5; currency=EUR")]
    [InlineData("for 85 eur", "money=85; currency=EUR")]
    [InlineData("1,200", "money=1200")]
    public void A_sum_is_read_in_either_custom(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new MoneySlot(), typed));

    [Theory]
    [InlineData("1e309", "“1e309” is no sum of money")]
    [InlineData("24.905", "“24.905” has too many places: money has two at most")]
    [InlineData("-5", "“-5” can't be negative")]
    public void What_is_no_sum_is_a_slip(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new MoneySlot(), typed));
}
