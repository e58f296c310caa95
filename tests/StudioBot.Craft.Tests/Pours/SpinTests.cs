using CsCheck;
using MathNet.Numerics.OdeSolvers;
using StudioBot.Craft.Pours;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Pours;

public sealed class SpinTests
{
    private static readonly Spin Slow = At(120, 1.5);

    [Fact]
    public void The_film_follows_the_thinning_law_integrated_step_by_step()
    {
        // dh/dt = −2ρω²h³/(3η), Emslie, Bonner and Peck 1958
        var rate = 2 * 1050 * Math.Pow(Slow.Speed.RadiansPerSecond, 2) / (3 * 1.5);
        var films = RungeKutta.FourthOrder(2.5e-3, 0, 20, 20001, (_, h) => -rate * h * h * h);

        Assert.Equal(films[^1] * 1000, Slow.FilmAfter(Mm(2.5), TimeSpan.FromSeconds(20)).Millimetres, 1e-5);
    }

    [Fact]
    public void The_time_to_a_film_leaves_that_film() =>
        Gen.Select(Gen.Double[1, 5], Gen.Double[0.1, 0.9]).Sample((start, share) =>
        {
            var time = Assert.IsType<Finding<TimeSpan>.Found>(Slow.TimeTo(Mm(start), Mm(start * share))).Value;
            Assert.Equal(start * share, Slow.FilmAfter(Mm(start), time).Millimetres, start * 1e-5);
        });

    [Fact]
    public void No_film_is_thicker_than_the_limit() =>
        Gen.Select(Gen.Double[0.1, 10], Gen.Double[1, 120]).Sample((start, seconds) =>
            Assert.True(
                Slow.FilmAfter(Mm(start), TimeSpan.FromSeconds(seconds))
                < Slow.ThinLimit(TimeSpan.FromSeconds(seconds))));

    [Fact]
    public void Spinning_makes_no_film_thicker() =>
        Assert.Equal(
            NoFigure.WrongDirection, Assert.IsType<Finding<TimeSpan>.None>(Slow.TimeTo(Mm(1), Mm(2))).Kind);

    [Fact]
    public void A_table_that_stands_never_gets_there() =>
        Assert.Equal(
            NoFigure.OutOfRange, Assert.IsType<Finding<TimeSpan>.None>(At(0, 1).TimeTo(Mm(2), Mm(1))).Kind);

    [Theory]
    // ω²R/g at the corner of a 4 in tile, 7.18 cm; over 1 splashes, over 3 is refused (common practice)
    [InlineData(100, typeof(Finding<double>.Found))] // 0.80
    [InlineData(120, typeof(Finding<double>.Cautioned))] // 1.16
    [InlineData(200, typeof(Finding<double>.None))] // 3.21
    public void A_fast_rim_is_a_caution_and_a_very_fast_one_is_refused(double rpm, Type expected) =>
        Assert.IsType(expected, At(rpm, 1).RimPull(Spin.RimRadius(Tile)));

    [Fact]
    public void The_speed_for_a_pull_has_that_pull()
    {
        // ω²R/g = 1 at R = 7.18 cm: √(9.80665/0.0718) = 11.687 rad/s = 111.6 rpm. Circular motion.
        var speed = Spin.SpeedFor(Length.FromCentimetres(7.18), pull: 1);

        Assert.Equal(111.6, speed.RevolutionsPerMinute, 0.05);
    }

    [Fact]
    public void A_logged_spin_tells_the_viscosity() =>
        Gen.Select(Gen.Double[0.3, 3], Gen.Double[5, 60]).Sample((viscosity, seconds) =>
        {
            var spin = At(120, viscosity);
            var time = TimeSpan.FromSeconds(seconds);
            var found = Assert.IsType<Finding<DynamicViscosity>.Found>(
                Spin.ViscosityBehind(Mm(2.5), spin.FilmAfter(Mm(2.5), time), time, spin.Density, spin.Speed));
            Assert.Equal(viscosity, found.Value.PascalSeconds, viscosity * 1e-9);
        });

    [Fact]
    public void Where_nothing_left_the_tile_nothing_is_learnt() =>
        Assert.IsType<Finding<DynamicViscosity>.None>(
            Spin.ViscosityBehind(Mm(2.5), Mm(2.5), TimeSpan.FromSeconds(20), Slow.Density, Slow.Speed));

    private static Surface.Panel Tile => new(Length.FromInches(4), Length.FromInches(4));

    private static Spin At(double rpm, double viscosity) => new(
        Density.FromKilogramsPerCubicMetre(1050),
        RotationalSpeed.FromRevolutionsPerMinute(rpm),
        DynamicViscosity.FromPascalSeconds(viscosity));

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
