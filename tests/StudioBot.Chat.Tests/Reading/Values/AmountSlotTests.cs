using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class AmountSlotTests
{
    [Theory]
    [InlineData("250 ml", "volume_ml=250")]
    [InlineData("2 dl", "volume_ml=200")]
    [InlineData("1 L 2 dl", "volume_ml=1200")]
    [InlineData("0.5 kg", "mass_g=500")]
    [InlineData("16 oz", "mass_g=453.592")]   // 28.3495 g each
    public void An_amount_is_a_volume_or_a_mass(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new AmountSlot("an amount", "250 ml"), typed));

    [Theory]
    [InlineData("900 L", "“900 L” is more than a studio has")]
    [InlineData("0 ml", "“0 ml” is nothing: above zero")]
    [InlineData("-5 ml", "“-5 ml” can't be negative")]
    public void What_no_shelf_holds_is_a_slip(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new AmountSlot("an amount", "250 ml"), typed));

    [Theory]
    [InlineData("250", "volume_ml=250")]
    public void Where_a_bare_number_will_do_it_is_a_volume(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new AmountSlot("an amount", "250 ml") { Bare = Measure.Volume }, typed));

    [Theory]
    [InlineData("nothing", "volume_ml=0")]
    [InlineData("0 ml", "volume_ml=0")]
    public void Nothing_is_an_amount_where_nothing_may_be_left(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new AmountSlot("an amount", "40 ml") { MayBeNothing = true }, typed));
}
