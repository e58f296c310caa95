using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Surfaces;

public sealed class SurfaceLimitsTests
{
    // limits: common practice, no source
    [Theory]
    [InlineData(1, 300)]
    [InlineData(30, 40)]
    public void A_panel_of_a_usual_size_is_taken(double width, double height) =>
        Assert.IsType<Finding<Surface>.Found>(SurfaceLimits.Of(Panel(width, height)));

    [Theory]
    [InlineData(0.9, 30)]
    [InlineData(30, 301)]
    public void A_size_nobody_pours_is_asked_about(double width, double height)
    {
        var none = Assert.IsType<Finding<Surface>.None>(SurfaceLimits.Of(Panel(width, height)));

        Assert.Equal(NoFigure.OutOfRange, none.Kind);
        Assert.Contains("cm or mm", none.Instead, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0.05, true)]
    [InlineData(20, true)]
    [InlineData(0.04, false)]
    [InlineData(25, false)]
    public void A_film_is_between_a_coat_of_varnish_and_a_cast(double millimetres, bool taken) =>
        Assert.Equal(taken, SurfaceLimits.OfFilm(Length.FromMillimetres(millimetres)) is Finding<Length>.Found);

    [Theory]
    [InlineData(0, true)]
    [InlineData(10, true)]
    [InlineData(11, false)]
    public void Sides_are_at_most_a_hand_deep(double centimetres, bool taken) =>
        Assert.Equal(taken, SurfaceLimits.OfDepth(Length.FromCentimetres(centimetres)) is Finding<Length>.Found);

    [Theory]
    [InlineData(30, 2, true)]
    [InlineData(400, 2, false)]
    [InlineData(30, 20, false)]
    public void One_odd_size_is_enough_to_ask(double side, double depth, bool taken)
    {
        var surfaces = new SurfaceSet(
            [new SurfaceGroup(2, Panel(10, 10)), new SurfaceGroup(1, Panel(side, side))],
            Length.FromCentimetres(depth));

        Assert.Equal(taken, SurfaceLimits.Of(surfaces) is Finding<SurfaceSet>.Found);
    }

    [Fact]
    public void The_largest_size_in_inches_is_still_the_largest() =>
        Assert.IsType<Finding<Surface>.Found>(
            SurfaceLimits.Of(new Surface.Disc(Length.FromInches(300 / 2.54))));

    private static Surface.Panel Panel(double width, double height) =>
        new(Length.FromCentimetres(width), Length.FromCentimetres(height));
}
