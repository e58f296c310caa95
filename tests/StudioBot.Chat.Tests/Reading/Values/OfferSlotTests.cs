using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class OfferSlotTests
{
    [Theory]
    [InlineData("5,50/10g 1 g per 20 ml", "a_money=5.5; a_mass_g=10; a_dose_g=1; a_per_ml=20")]
    [InlineData("white", "a=white")]
    public void A_pack_has_its_price_and_its_dose(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new OfferSlot("a"), typed));

    [Theory]
    [InlineData("5.50/10g", "“” how much of it colours how much: a dose is missing")]
    [InlineData("5.50/10g 1 g", "“” what the dose colours is missing: per 20 ml")]
    public void Half_an_offer_is_a_slip(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new OfferSlot("a"), typed));
}
