using CsCheck;
using StudioBot.Craft.Drying;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Drying;

/// <summary>Masses built from a known exponential, so that its figures are what the fit must find again.</summary>
public sealed class DryingFitTests
{
    [Fact]
    public void Four_exact_weighings_give_their_curve_back() =>
        Gen.Select(Gen.Double[5, 60], Gen.Double[5, 50], Gen.Double[200, 600]).Sample((tau, loss, dry) =>
        {
            var curve = Curve(Fit([.. new[] { 0.3, 0.9, 1.4, 2.5 }.Select(x => At(x * tau, tau, loss, dry))], 0.001));
            return Math.Abs(curve.Tau.TotalHours / tau - 1) < 1e-3
                && Math.Abs(curve.DryMass.Grams - dry) < 0.01
                && Math.Abs(curve.Loss.Grams - loss) < 0.01
                && curve.IsOneCurve;
        });

    [Fact]
    public void Uneven_three_are_fitted_too()
    {
        var curve = Curve(Fit([At(0, 24, 20, 300), At(10, 24, 20, 300), At(40, 24, 20, 300)], 0.01));

        Assert.Equal(24, curve.Tau.TotalHours, 0.01);
        Assert.InRange(24, curve.TauFrom.TotalHours, curve.TauTo.TotalHours);
    }

    [Fact]
    public void The_squares_are_those_of_a_linear_fit_in_a_numerics_library()
    {
        // For the τ found, m_∞ and Δ are a straight line in exp(−x/τ).
        double[] x = [0, 6, 18, 30, 44], m = [448.0, 436.1, 422.8, 416.9, 414.0];
        var curve = Curve(Fit([.. x.Zip(m, Weigh)], 0.1));

        var (dry, loss) = MathNet.Numerics.Fit.Line([.. x.Select(at => Math.Exp(-at / curve.Tau.TotalHours))], m);

        Assert.Equal(dry, curve.DryMass.Grams, 6);
        Assert.Equal(loss, curve.Loss.Grams, 6);
    }

    [Fact]
    public void The_curve_counts_from_the_pour_not_from_the_first_weighing()
    {
        var curve = Curve(Fit([At(72, 40, 60, 500), At(100, 40, 60, 500), At(128, 40, 60, 500)], 0.01));

        Assert.Equal(60, curve.Loss.Grams, 0.01);
        Assert.Equal(60 * Math.Exp(-2), curve.Left(TimeSpan.FromHours(80)).Grams, 0.01);
    }

    [Fact]
    public void A_straight_loss_says_nothing_yet()
    {
        Assert.IsType<Finding<DryingCurve>.None>(
            Fit([Weigh(0, 320), Weigh(10, 318), Weigh(25, 315), Weigh(40, 312)], 0.1));
        Assert.IsType<Finding<DryingCurve>.None>(Fit([Weigh(0, 320), Weigh(10, 318), Weigh(20, 316)], 0.1));
    }

    [Fact]
    public void A_gain_says_nothing()
    {
        Assert.IsType<Finding<DryingCurve>.None>(Fit([Weigh(0, 310), Weigh(10, 315), Weigh(20, 317)], 0.1));
        Assert.IsType<Finding<DryingCurve>.None>(
            Fit([Weigh(0, 310), Weigh(10, 315), Weigh(20, 317), Weigh(30, 318)], 0.1));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public void Too_few_weighings_say_nothing(int count) =>
        Assert.IsType<Finding<DryingCurve>.None>(
            Fit([.. Enumerable.Range(0, count).Select(i => Weigh(12 * i, 300 - i))], 0.1));

    [Fact]
    public void A_curve_that_is_not_one_exponential_says_so_and_widens()
    {
        // A fast and a slow exponential together.
        double[] hours = [0, 4, 8, 16, 40, 80, 160];
        var masses = hours.Select(x => Weigh(x, 400 + 20 * Math.Exp(-x / 5) + 20 * Math.Exp(-x / 80)));

        var curve = Curve(Fit([.. masses], 0.1));

        Assert.False(curve.IsOneCurve);
        Assert.True(curve.TauTo > curve.Tau && curve.TauFrom < curve.Tau);
    }

    [Fact]
    public void A_rougher_scale_makes_a_wider_interval()
    {
        Weighing[] weighings = [At(0, 24, 20, 300), At(14, 24, 20, 300), At(30, 24, 20, 300), At(50, 24, 20, 300)];
        var (fine, rough) = (Curve(Fit(weighings, 0.05)), Curve(Fit(weighings, 0.2)));

        Assert.True(rough.TauTo - rough.TauFrom > fine.TauTo - fine.TauFrom);
    }

    [Fact]
    public void The_bare_panel_makes_two_weighings_speak_while_much_is_left()
    {
        var dry = DryMass.FromBare(Grams(200), Grams(440), 0.375);  // 240 g of paint, 150 g of it water
        var finding = DryingFit.Of([At(24, 60, 80, 290), At(72, 60, 80, 290)], Grams(0.1), dry, Grams(150));

        Assert.Equal(290, dry.Expected.Grams, 9);
        Assert.Equal(7.5, dry.Deviation.Grams, 9);
        Assert.Equal(60, Curve(finding).Tau.TotalHours, 0.01);
    }

    private static Finding<DryingCurve> Fit(IReadOnlyList<Weighing> weighings, double deviation) =>
        DryingFit.Of(weighings, Grams(deviation));

    private static DryingCurve Curve(Finding<DryingCurve> finding) =>
        Assert.IsType<Finding<DryingCurve>.Found>(finding).Value;

    private static Weighing At(double hours, double tau, double loss, double dry) =>
        Weigh(hours, dry + loss * Math.Exp(-hours / tau));

    private static Weighing Weigh(double hours, double grams) => new(TimeSpan.FromHours(hours), Grams(grams));

    private static Mass Grams(double grams) => Mass.FromGrams(grams);
}
