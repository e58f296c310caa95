using StudioBot.Craft.Coats;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Coats;

public sealed class CoatAmountsTests
{
    private static readonly Surface Square = new Surface.Panel(Length.FromCentimetres(30), Length.FromCentimetres(30));

    [Fact]
    public void Film_sides_and_run_off_add_up()
    {
        // 900 cm² × 2 mm = 180 mL; 120 cm × 2 cm × 0.5 mm = 12 mL; a tenth more runs off.
        var amounts = Found(new CoatWish(new SurfaceSet(Square, depth: Length.FromCentimetres(2)), Film(2), 0.10));

        Assert.Equal(192 * 1.1, amounts.Total.Millilitres, 9);
        Assert.Equal(19.2, amounts.RunOff.Millilitres, 9);
        Assert.Equal(192 * 1.1, amounts.OneCoat.Volume.Millilitres, 9);
    }

    [Fact]
    public void Two_coats_take_twice_as_much_and_each_is_mixed_for_itself()
    {
        var amounts = Found(new CoatWish(new SurfaceSet(Square), Film(1), 0, Coats: 2));

        Assert.Equal(180, amounts.Total.Millilitres, 9);
        Assert.Equal(90, amounts.OneCoat.Volume.Millilitres, 9);
    }

    [Fact]
    public void More_than_stays_up_by_itself_is_cautioned() =>
        Assert.IsType<Finding<CoatAmounts>.Cautioned>(
            CoatAmounts.Of(new CoatWish(new SurfaceSet(Square), Film(4), 0.10), Kits.Ordinary));

    [Theory]
    [InlineData(10.1)]  // common practice: over 10 mm is a cast, not a coat
    [InlineData(0.01)]
    [InlineData(0)]
    public void A_cast_or_a_breath_is_no_coat(double millimetres) =>
        Assert.IsType<Finding<CoatAmounts>.None>(
            CoatAmounts.Of(new CoatWish(new SurfaceSet(Square), Film(millimetres), 0.10), Kits.Ordinary));

    [Theory]
    [InlineData(0.1, 0)]
    [InlineData(-0.1, 1)]
    [InlineData(0.6, 1)]
    public void What_makes_no_sense_is_refused(double runOff, int coats) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => CoatAmounts.Of(
            new CoatWish(new SurfaceSet(Square), Film(2), runOff, Coats: coats), Kits.Ordinary));

    private static CoatAmounts Found(CoatWish wish) =>
        Assert.IsType<Finding<CoatAmounts>.Found>(CoatAmounts.Of(wish, Kits.Ordinary)).Value;

    private static Length Film(double millimetres) => Length.FromMillimetres(millimetres);
}
