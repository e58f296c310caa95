using CsCheck;
using MathNet.Numerics;
using StudioBot.Craft.Flow;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Flow;

public sealed class ThinningTests
{
    [Fact]
    public void The_range_is_what_the_two_laws_say()
    {
        // 15 mL reads 0.5 s, 5 mL more 1.5 s, wanted 2 s: 1.31 mL by millilitres, 1.91 mL by shares
        var step = Found(Traces(15, 0.5, 5, 1.5, 2, AddedLiquid.Medium));

        Assert.Equal(NextLiquid.SameAgain, step.What);
        Assert.Equal(1.91, step.More.Millilitres, 0.01);
        Assert.Equal(1.31, step.Low.Millilitres, 0.01);
        Assert.Equal(1.91, step.High!.Value.Millilitres, 0.01);
        Assert.Equal(step.Low, step.First);
    }

    [Fact]
    public void What_follows_the_law_exactly_is_hit_exactly() =>
        Gen.Select(Gen.Double[20, 500], Gen.Double[0.1, 0.4], Gen.Double[1, 20], Gen.Double[4, 8])
            .Sample((have, share, more, slope) =>
            {
                double Reading(double volume) => 60 * Math.Exp(-slope * volume / (have + volume));
                var added = have * share / (1 - share);
                var step = Step(Thinning.Next(
                    Traces(have, Reading(0), added, Reading(added), Reading(added + more))));
                Assert.Equal(more, step.More.Millilitres, more * 1e-4);
            });

    [Fact]
    public void A_target_that_was_passed_takes_the_first_liquid_back()
    {
        // 100 mL at 3 s, 10 mL more 1 s, wanted 1.5 s: φ* = φ₁·ln(1.5/3)/ln(1/3), back 10/φ* − 110 = 64.3 mL
        var step = Found(Traces(100, 3, 10, 1, 1.5, AddedLiquid.Thinner));

        Assert.Equal(NextLiquid.FirstBack, step.What);
        Assert.Equal(64.35, step.More.Millilitres, 0.01);

        // by millilitres 100·(1/L − 1), L = ln(1.5/3)/ln(1/3) = 0.63093
        Assert.Equal(58.50, step.Low.Millilitres, 0.01);
        Assert.Equal(step.More, step.High);
    }

    [Theory]
    // readings within their own spread: 10 % for a cup, √2·30 % for a trace (common practice)
    [InlineData(1.0, 1.3, 2)]
    [InlineData(1.3, 1.0, 0.5)]
    [InlineData(1.0, 1.0, 2)]
    public void Readings_that_hardly_differ_say_nothing(double before, double after, double target) =>
        Assert.Equal(NoFigure.Undetermined, None(Traces(20, before, 5, after, target)).Kind);

    [Theory]
    // medium raises a trace, varnish and water lower it (common practice)
    [InlineData(2.5, 1, AddedLiquid.Thinner)]
    [InlineData(0.5, 2, AddedLiquid.Medium)]
    public void One_reading_says_which_liquid_to_try(double reading, double target, AddedLiquid expected) =>
        Assert.Equal(expected, Assert.IsType<Finding<ThinningStart>.Found>(
            Thinning.Start(Trace(reading), Trace(target))).Value.What);

    [Fact]
    public void Two_traces_as_near_as_the_eye_is_rough_are_one() =>
        Assert.IsType<Finding<ThinningStart>.None>(Thinning.Start(Trace(1.3), Trace(1)));

    [Fact]
    public void What_was_added_leads_away_from_some_targets() =>
        Assert.Equal(NoFigure.WrongDirection, None(Traces(20, 1, 5, 2, 0.5)).Kind);

    [Fact]
    public void No_amount_is_thinner_than_the_thinner_itself() =>
        Assert.Equal(NoFigure.OutOfRange, None(Traces(20, 10, 20, 5, 2)).Kind);

    [Fact]
    public void A_target_far_beyond_the_readings_is_approached_by_half()
    {
        var cautioned = Assert.IsType<Finding<ThinningStep>.Cautioned>(
            Thinning.Next(Traces(100, 3, 5, 2, 0.9)));

        Assert.Equal(cautioned.Value.More.Millilitres / 2, cautioned.Value.First.Millilitres, 1e-9);
    }

    [Theory]
    // medium raises a trace; varnish, water and extender lower it (common practice)
    [InlineData(AddedLiquid.Medium, 2, 1)]
    [InlineData(AddedLiquid.Thinner, 1, 2)]
    public void Readings_that_run_the_wrong_way_are_asked_about(AddedLiquid added, double before, double after)
    {
        var none = None(Traces(20, before, 5, after, after, added));

        Assert.Equal(NoFigure.Undetermined, none.Kind);
        Assert.Contains("swapped", none.Instead, StringComparison.Ordinal);
    }

    [Fact]
    public void A_trace_is_no_cup() =>
        Assert.Equal(
            NoFigure.Undetermined,
            None(new ThinningRun(Ml(20), Trace(1), Ml(5), Cup(30), Trace(2))).Kind);

    [Fact]
    public void A_cup_that_cannot_be_read_gives_no_step() =>
        Assert.Equal(
            NoFigure.OutOfRange, None(new ThinningRun(Ml(200), Cup(40), Ml(10), Cup(31), Cup(12))).Kind);

    [Fact]
    public void Readings_at_two_temperatures_are_a_caution()
    {
        var warm = new FlowReading.OfTrace(new Trace(TimeSpan.FromSeconds(2)), Temperature.FromCelsius(24));
        var cool = new FlowReading.OfTrace(new Trace(TimeSpan.FromSeconds(4)), Temperature.FromCelsius(20));

        Assert.IsType<Finding<ThinningStep>.Cautioned>(
            Thinning.Next(new ThinningRun(Ml(100), cool, Ml(10), warm, Trace(1.8))));
    }

    [Fact]
    public void Three_readings_and_more_are_fitted_by_least_squares()
    {
        // the line of ln(seconds) on the share added, by a library of numerics
        double[] added = [0, 5, 10, 20];
        double[] seconds = [4.0, 3.1, 2.6, 1.7];
        var (intercept, slope) = Fit.Line(
            [.. added.Select(v => v / (100 + v))], [.. seconds.Select(time => Math.Log(time))]);
        var share = (Math.Log(1.2) - intercept) / slope;
        var expected = 100 * share / (1 - share) - 20;

        var step = Step(Thinning.Next(new ThinningRun(
            Ml(100), [.. added.Zip(seconds, (v, s) => new ThinningReading(Ml(v), Trace(s)))], Trace(1.2))));

        Assert.Equal(expected, step.More.Millilitres, 1e-9);
        Assert.True(step.Low < step.More && step.More < step.High);
    }

    [Fact]
    public void Readings_by_eye_leave_a_range_even_on_a_perfect_line()
    {
        // shares 0, 1/6, 2/7, slope −6, wanted share ln 8/6 = 0.34657; ±30 % a trace:
        // sd = ln 1.3/6·√(1/3 + 0.19578²/0.041194) = 0.04916 (textbook calibration error)
        var step = Step(Thinning.Next(Fitted(3)));

        Assert.Equal(13.04, step.More.Millilitres, 0.01);
        Assert.Equal(2.33, step.Low.Millilitres, 0.01);
        Assert.Equal(25.49, step.High!.Value.Millilitres, 0.01);
    }

    [Fact]
    public void More_readings_of_the_same_make_the_range_narrower()
    {
        var few = Step(Thinning.Next(Fitted(3)));
        var many = Step(Thinning.Next(Fitted(12)));

        Assert.True(many.High!.Value.Millilitres - many.Low.Millilitres
            < few.High!.Value.Millilitres - few.Low.Millilitres);
    }

    [Fact]
    public void One_reading_is_no_run() =>
        Assert.Throws<ArgumentException>(() =>
            Thinning.Next(new ThinningRun(Ml(10), [new ThinningReading(default, Trace(1))], Trace(2))));

    // Readings of a cup that follows the law exactly, spread over the same 40 mL.
    private static ThinningRun Fitted(int readings) => new(
        Ml(100),
        [
            .. Enumerable.Range(0, readings)
                .Select(index => 40.0 * index / (readings - 1))
                .Select(volume => new ThinningReading(Ml(volume), Trace(8 * Math.Exp(-6 * volume / (100 + volume))))),
        ],
        Trace(1));

    private static ThinningRun Traces(
        double have,
        double before,
        double added,
        double after,
        double target,
        AddedLiquid liquid = AddedLiquid.Unnamed) =>
        new(Ml(have), Trace(before), Ml(added), Trace(after), Trace(target), liquid);

    private static ThinningStep Found(ThinningRun run) =>
        Assert.IsType<Finding<ThinningStep>.Found>(Thinning.Next(run)).Value;

    private static Finding<ThinningStep>.None None(ThinningRun run) =>
        Assert.IsType<Finding<ThinningStep>.None>(Thinning.Next(run));

    private static ThinningStep Step(Finding<ThinningStep> finding) => finding switch
    {
        Finding<ThinningStep>.Found found => found.Value,
        Finding<ThinningStep>.Cautioned cautioned => cautioned.Value,
        _ => throw new InvalidOperationException($"{finding}"),
    };

    private static FlowReading.OfTrace Trace(double seconds) => new(new Trace(TimeSpan.FromSeconds(seconds)));

    private static FlowReading.OfCup Cup(double seconds) =>
        new(CupCurves.Find("ford4")!, TimeSpan.FromSeconds(seconds));

    private static Volume Ml(double value) => Volume.FromMillilitres(value);
}
