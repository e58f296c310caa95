using CsCheck;
using StudioBot.Craft.Pours;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Pours;

public sealed class PourAmountsTests
{
    private const double Ml = 1e-9;

    [Fact]
    public void A_bloom_is_a_pillow_its_colours_and_a_little_activator()
    {
        // 30 cm square: 900 cm² at 2.5 mm, a fifth over: 270 mL (V = A·film·(1 + run-off)), shared 2.0 : 0.45 : 0.05
        var amounts = PourAmounts.For(Techniques.Bloom, Square(30), colours: 6);

        Assert.Equal(270, amounts.Need.Millilitres, Ml);
        Assert.Equal(216, amounts.Base.Millilitres, Ml);
        Assert.Equal(8.1, amounts.PerColour.Millilitres, Ml);
        Assert.Equal(5.4, amounts.Activator.Millilitres, Ml);
        Assert.Equal(45, amounts.RunOff.Millilitres, Ml);
    }

    [Fact]
    public void What_stays_in_the_cups_is_a_line_of_its_own()
    {
        // a pillow, six colours, an activator: eight cups of 3 mL (common practice)
        var amounts = PourAmounts.For(Techniques.Bloom, Square(30), colours: 6);

        Assert.Equal(8, amounts.Cups);
        Assert.Equal(24, amounts.CupWaste.Millilitres, Ml);
        Assert.Equal(294, amounts.TotalMixed.Millilitres, Ml);
    }

    [Fact]
    public void The_range_runs_from_thin_and_tidy_to_thick_and_wet()
    {
        // 900 cm²: 2.0 mm and a tenth over is 198 mL, 3.2 mm and 35 % over is 388.8 mL; 24 mL in the cups
        var amounts = PourAmounts.For(Techniques.Bloom, Square(30), colours: 6);

        Assert.Equal(222, amounts.Low.Millilitres, Ml);
        Assert.Equal(412.8, amounts.High.Millilitres, Ml);
    }

    [Fact]
    public void A_pour_without_a_base_coat_is_all_colours()
    {
        var amounts = PourAmounts.For(Techniques.RingPour, Square(30), colours: 4);

        Assert.Equal(default, amounts.Base);
        Assert.Equal(default, amounts.Activator);
        Assert.Equal(amounts.Need, amounts.AllColours);
        Assert.Equal(4, amounts.Cups);
    }

    [Fact]
    public void Sides_of_a_stated_depth_are_added_under_their_own_film()
    {
        // 120 cm around, 2 cm deep, 1 mm: 24 mL
        var amounts = PourAmounts.For(
            Techniques.Bloom, new SurfaceSet(Panel(30, 30), 1, Length.FromCentimetres(2)), colours: 6);

        Assert.Equal(24, amounts.OnSides.Millilitres, Ml);
        Assert.Equal(294, amounts.Need.Millilitres, Ml);
    }

    [Fact]
    public void The_parts_make_the_whole() =>
        Gen.Select(Gen.Double[1, 300], Gen.Double[1, 300], Gen.Int[1, 12]).Sample((width, height, colours) =>
        {
            var amounts = PourAmounts.For(Techniques.Bloom, new SurfaceSet(Panel(width, height)), colours);
            var parts = amounts.Base + colours * amounts.PerColour + amounts.Activator + amounts.CupWaste;
            Assert.Equal(
                amounts.TotalMixed.Millilitres, parts.Millilitres, amounts.TotalMixed.Millilitres * 1e-12);
            Assert.True(amounts.Low <= amounts.TotalMixed && amounts.TotalMixed <= amounts.High);
        });

    [Fact]
    public void A_bigger_surface_never_needs_less() =>
        Gen.Select(Gen.Double[1, 300], Gen.Double[1, 300], Gen.Double[0, 50]).Sample((width, height, more) =>
        {
            var small = PourAmounts.For(Techniques.Bloom, new SurfaceSet(Panel(width, height)), 3);
            var large = PourAmounts.For(Techniques.Bloom, new SurfaceSet(Panel(width + more, height)), 3);
            Assert.True(large.TotalMixed.Millilitres >= small.TotalMixed.Millilitres * (1 - 1e-12));
        });

    [Fact]
    public void Two_tiles_need_twice_what_one_needs()
    {
        var one = PourAmounts.For(Techniques.Bloom, new SurfaceSet(Panel(10, 10)), 3);
        var two = PourAmounts.For(Techniques.Bloom, new SurfaceSet(Panel(10, 10), count: 2), 3);

        Assert.Equal(2 * one.Need.Millilitres, two.Need.Millilitres, Ml);
    }

    [Fact]
    public void What_the_studio_learnt_is_planned_to_suffice_four_times_of_five()
    {
        // 3.41429 mm and 0.84 · 0.53452 mm (normal-normal update) on 900 cm²
        var learnt = new FilmEstimate(Mm(3.41429), Mm(0.188982), Mm(0.5), 3);

        var amounts = PourAmounts.For(Techniques.RingPour, Square(30), 4, learnt);

        Assert.Equal(90 * (3.41429 + 0.84 * 0.534522), amounts.Need.Millilitres, 1e-3);
        Assert.True(amounts.Low <= amounts.TotalMixed && amounts.TotalMixed <= amounts.High);
    }

    [Fact]
    public void There_is_a_colour_at_least() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PourAmounts.For(Techniques.Bloom, Square(30), 0));

    private static Length Mm(double value) => Length.FromMillimetres(value);

    private static SurfaceSet Square(double side) => new(Panel(side, side));

    private static Surface.Panel Panel(double width, double height) =>
        new(Length.FromCentimetres(width), Length.FromCentimetres(height));
}
