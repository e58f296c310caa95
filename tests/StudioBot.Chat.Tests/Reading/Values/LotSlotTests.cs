using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class LotSlotTests
{
    [Theory]
    [InlineData("lot H-12", "lot=H-12")]
    [InlineData("lot h12", "lot=H-12")]
    [InlineData("lots R-3 H-12", "lots=R-3|H-12")]
    [InlineData("H-12", "lot=H-12")]
    [InlineData("lot Z-99", "“Z-99” is no lot here")]
    [InlineData("lot winterberry", "“winterberry” is no lot here")]
    public void A_lot_is_known_by_its_label(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new LotSlot(), typed));

    [Theory]
    [InlineData("lot z-99", "lot=Z-99")]
    [InlineData("lot winterberry", "“winterberry” can't be a lot's label: that is a bare word with a digit, or of four letters at most")]
    [InlineData("lot =HYPERLINK", "“=HYPERLINK” can't be a lot's label: that is a bare word with a digit, or of four letters at most")]
    public void A_delivery_may_bring_a_new_one(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new LotSlot { MayBeNew = true }, typed));
}
