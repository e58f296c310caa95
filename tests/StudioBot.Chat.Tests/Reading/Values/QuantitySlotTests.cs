using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class QuantitySlotTests
{
    [Theory]
    [InlineData("8 fl oz", "volume_ml=236.588")]   // 29.5735 ml each
    [InlineData("45 g", "mass_g=45")]
    [InlineData("1 in", "length_cm=2.54")]
    [InlineData("50F", "temperature_c=10")]
    [InlineData("1 sq in", "area_cm2=6.452")]
    public void A_figure_comes_out_in_the_unit_of_its_measure(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new QuantitySlot(), typed));
}
