using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class NamesSlotTests
{
    [Theory]
    [InlineData("white", "material=white")]
    [InlineData("white, lamp black", "materials=white|lamp black")]
    [InlineData("mica", "materials=blue mica|gold mica|silver mica|copper mica")]
    [InlineData("tile 10cm", "material=tile 10cm")]
    [InlineData("tiles 10 cm, white", "materials=tile 10cm|white")]
    [InlineData("zorks", "“zorks” is no material here")]
    public void Several_materials_may_be_asked_after(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new NamesSlot(), typed));
}
