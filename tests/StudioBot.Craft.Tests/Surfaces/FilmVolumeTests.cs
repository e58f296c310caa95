using CsCheck;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Surfaces;

public sealed class FilmVolumeTests
{
    private static readonly Length TwoCentimetres = Length.FromCentimetres(2);

    [Fact]
    public void Sides_count_with_their_own_thinner_film()
    {
        // 900 cm² at 2.5 mm and 240 cm² of sides at 1 mm: 225 + 24 mL, plane geometry
        var panel = new SurfaceSet(Square(30), depth: TwoCentimetres);

        Assert.Equal(249, FilmVolume.On(panel, Length.FromMillimetres(2.5), FilmVolume.PouredSides).Millilitres, 1e-9);
    }

    [Fact]
    public void Without_a_depth_only_the_face_counts() =>
        Assert.Equal(
            225,
            FilmVolume.On(new SurfaceSet(Square(30)), Length.FromMillimetres(2.5), FilmVolume.PouredSides).Millilitres,
            1e-9);

    [Fact]
    public void A_bigger_surface_never_needs_less() =>
        Gen.Select(Gen.Double[1, 300], Gen.Double[0, 100], Gen.Double[0.05, 20]).Sample((side, more, film) =>
        {
            var small = FilmVolume.On(new SurfaceSet(Square(side), 1, TwoCentimetres), Mm(film), Mm(0.5));
            var large = FilmVolume.On(new SurfaceSet(Square(side + more), 1, TwoCentimetres), Mm(film), Mm(0.5));
            Assert.True(large >= small);
        });

    private static Length Mm(double value) => Length.FromMillimetres(value);

    private static Surface.Panel Square(double centimetres) =>
        new(Length.FromCentimetres(centimetres), Length.FromCentimetres(centimetres));
}
