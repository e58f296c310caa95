using StudioBot.Craft.Pours;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Pours;

public sealed class RunOffTests
{
    [Theory]
    // rim over face against that of a 30 cm square, between a half and twice (common practice)
    [InlineData(30, 30, 0.20)]
    [InlineData(20, 20, 0.30)]
    [InlineData(10.16, 10.16, 0.40)] // a 4 in tile: 2.95 times, taken as twice
    [InlineData(60, 80, 0.10)] // 0.4375 times, taken as half
    public void A_small_piece_loses_more_over_its_rim(double width, double height, double expected) =>
        Assert.Equal(
            expected,
            RunOff.On(new Surface.Panel(Length.FromCentimetres(width), Length.FromCentimetres(height)), 0.20),
            1e-9);
}
