using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class WeighingsSlotTests
{
    [Theory]
    [InlineData("17 318.4 g", "piece=17; mass_g=318.4")]
    [InlineData("17 318.4", "piece=17; mass_g=318.4")]
    [InlineData("17 11.2 oz", "piece=17; mass_g=317.515")]   // 28.3495 g each
    [InlineData("17 318.4g 18 402.1g", "items=17:318.4g|18:402.1g")]
    public void A_piece_and_its_mass_find_each_other(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new WeighingsSlot(), typed));

    [Theory]
    [InlineData("17", "“” the weight is missing")]
    [InlineData("318.4 g", "“” the piece is missing")]
    [InlineData("999 318 g", "“999” is no piece here: there is none of that number")]
    [InlineData("17 0 g", "“0 g” is no weight: above zero")]
    public void Half_a_weighing_is_a_slip(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new WeighingsSlot(), typed));
}
