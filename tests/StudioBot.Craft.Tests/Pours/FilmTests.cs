using StudioBot.Craft.Pours;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Pours;

public sealed class FilmTests
{
    private static readonly Area Face = Area.FromSquareCentimetres(900);

    [Theory]
    [InlineData(26, 0)] // 0.29 mm
    [InlineData(1100, 0)] // 12.2 mm
    [InlineData(40, 330)] // the two amounts swapped
    public void A_film_no_pour_leaves_is_a_typing_slip(double mixed, double left) =>
        Assert.Equal(
            NoFigure.OutOfRange,
            Assert.IsType<Finding<Length>.None>(Film.Need(Ml(mixed), Ml(left), Face)).Kind);

    [Fact]
    public void Film_and_run_off_make_up_the_need()
    {
        // 318 mixed, 40 left, 55 caught: mass balance
        var need = Value(Film.Need(Ml(318), Ml(40), Face));
        var laid = Value(Film.Laid(Ml(318), Ml(40), Ml(55), Face));
        var runOff = Assert.IsType<Finding<double>.Found>(Film.RunOff(Ml(318), Ml(40), Ml(55))).Value;

        Assert.Equal(need.Millimetres, laid.Millimetres * (1 + runOff), 1e-9);
    }

    [Fact]
    public void What_was_all_caught_laid_nothing() =>
        Assert.IsType<Finding<double>.None>(Film.RunOff(Ml(100), Ml(40), Ml(60)));

    private static Length Value(Finding<Length> finding) => Assert.IsType<Finding<Length>.Found>(finding).Value;

    private static Volume Ml(double value) => Volume.FromMillilitres(value);
}
