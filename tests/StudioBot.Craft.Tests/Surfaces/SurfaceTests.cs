using CsCheck;
using MathNet.Numerics;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Surfaces;

public sealed class SurfaceTests
{
    [Fact]
    public void A_round_oval_is_a_disc() =>
        Gen.Double[1, 300].Sample(size =>
        {
            var disc = new Surface.Disc(Length.FromCentimetres(size));
            var oval = new Surface.Oval(disc.Diameter, disc.Diameter);
            Assert.Equal(disc.Face.SquareMetres, oval.Face.SquareMetres, 1e-12);
            Assert.Equal(disc.Rim.Metres, oval.Rim.Metres, 1e-12);
        });

    [Theory]
    [InlineData(30, 20)]
    [InlineData(30, 10)]
    [InlineData(30, 6)]
    public void The_rim_of_an_oval_is_its_arc_measured_piece_by_piece(double width, double height)
    {
        // the arc length of the ellipse, integrated numerically
        double Arc(double t) =>
            Math.Sqrt(Math.Pow(width / 2 * Math.Sin(t), 2) + Math.Pow(height / 2 * Math.Cos(t), 2));
        var around = 4 * Integrate.OnClosedInterval(Arc, 0, Math.PI / 2, 1e-12);

        var oval = new Surface.Oval(Length.FromCentimetres(width), Length.FromCentimetres(height));

        Assert.Equal(around, oval.Rim.Centimetres, around * 1e-6);
    }

    [Fact]
    public void A_hexagon_may_be_measured_across_its_corners()
    {
        // side = half the width across corners; area 3√3/2 side²: plane geometry
        var hexagon = Surface.Hexagon.FromAcrossCorners(Length.FromCentimetres(20));

        Assert.Equal(3 * Math.Sqrt(3) / 2 * 100, hexagon.Face.SquareCentimetres, 1e-9);
        Assert.Equal(60, hexagon.Rim.Centimetres, 1e-9);
    }
}
