using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class ItemsSlotTests
{
    [Theory]
    [InlineData("20 ml white", "material=white; volume_ml=20")]
    [InlineData("white 20 ml", "material=white; volume_ml=20")]
    [InlineData("20ml white, 2 g blue mica", "items=white:20ml|blue mica:2g")]
    [InlineData("white 20ml and blue mica 2 g", "items=white:20ml|blue mica:2g")]
    [InlineData("8 cups", "material=cup; pieces=8")]
    public void An_amount_and_a_name_find_each_other(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new ItemsSlot(), typed));

    [Theory]
    [InlineData("white", "“white” has no amount")]
    [InlineData("20 white", "“20” has no unit: ml or g?")]
    [InlineData("20 ml", "“20 ml” is of what? The material is missing")]
    [InlineData("20 ml zorks", "“zorks” is no material of this studio")]
    [InlineData("lots of white", "“lots” is no amount")]
    public void Half_an_entry_is_a_slip(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new ItemsSlot(), typed));

    [Theory]
    [InlineData("2 g mica", "“mica” fits several: blue mica, gold mica, silver mica, copper mica")]
    public void A_word_that_stands_in_several_names_says_too_little(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new ItemsSlot(), typed));

    [Theory]
    [InlineData("2 x 1 L medium", "material=medium; volume_ml=2000; count=2; pack_ml=1000")]
    [InlineData("2x1L medium", "material=medium; volume_ml=2000; count=2; pack_ml=1000")]
    [InlineData("500 ml white", "material=white; volume_ml=500; count=1; pack_ml=500")]
    public void What_comes_in_packs_is_multiplied(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new ItemsSlot { InPacks = true }, typed));

    [Theory]
    [InlineData("white 0 ml", "material=white; volume_ml=0")]
    public void A_stocktake_may_find_nothing(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new ItemsSlot { MayBeNothing = true }, typed));
}
