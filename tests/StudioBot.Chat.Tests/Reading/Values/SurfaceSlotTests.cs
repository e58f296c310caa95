using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Reading.Values;

public sealed class SurfaceSlotTests
{
    [Theory]
    [InlineData("30cm panel", "shape=square; width_cm=30; height_cm=30; count=1; area_cm2=900")]
    [InlineData("20cm round", "shape=round; diameter_cm=20; count=1; area_cm2=314.159")]   // pi/4 of 400
    // half the root of three of 100
    [InlineData("10cm hexagon", "shape=hexagon; width_cm=10; count=1; area_cm2=86.603")]
    public void One_length_is_a_square_a_round_or_a_hexagon(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new SurfaceSlot(), typed));

    [Theory]
    [InlineData("30x40 cm", "shape=rect; width_cm=30; height_cm=40; count=1; area_cm2=1200")]
    [InlineData("A4", "shape=rect; width_cm=21; height_cm=29.7; count=1; area_cm2=623.7")]   // ISO 216
    [InlineData("30x40cm oval", "shape=oval; width_cm=30; height_cm=40; count=1; area_cm2=942.478")]   // pi/4 of 1200
    public void Two_lengths_are_a_rectangle_or_an_oval(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new SurfaceSlot(), typed));

    [Theory]
    [InlineData("six 4in tiles", "shape=square; width_cm=10.16; height_cm=10.16; count=6; area_cm2=619.354")]
    [InlineData("10cm tiles x 12", "shape=square; width_cm=10; height_cm=10; count=12; area_cm2=1200")]
    [InlineData("2 tiles 10cm + 1 panel 40cm", "surfaces=2*square 10+1*square 40; count=3; area_cm2=1800")]
    [InlineData("a dozen coasters", "shape=round; diameter_cm=10; count=12; area_cm2=942.478")]
    public void Several_may_be_covered(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new SurfaceSlot(), typed));

    [Theory]
    // 1200 and 2 times 140
    [InlineData("30x40 cm 2cm deep", "shape=rect; width_cm=30; height_cm=40; depth_cm=2; count=1; area_cm2=1480")]
    public void Depth_adds_the_sides(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new SurfaceSlot(), typed));

    [Theory]
    [InlineData("400cm panel", "“400cm” is too large: sizes go from 1 to 300 cm")]
    [InlineData("1cm 30cm deep panel", "“30cm” is no depth of a panel: up to 10 cm")]
    [InlineData("0 tiles 10cm", "“0 tiles” is too few: at least one")]
    [InlineData("5000 tiles 10cm", "“5000” is more than a studio pours")]
    public void What_nobody_pours_is_a_slip(string typed, string understood) =>
        Assert.Equal(understood, OneSlot.Read(new SurfaceSlot(), typed));
}
