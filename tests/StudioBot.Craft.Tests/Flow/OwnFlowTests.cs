using StudioBot.Craft.Flow;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Flow;

public sealed class OwnFlowTests
{
    private static readonly FlowCup Ford4 = CupCurves.Find("ford4")!;
    private static readonly Volume Cup = Volume.FromMillilitres(200);

    [Fact]
    public void Without_readings_common_practice_stands()
    {
        var none = OwnFlow.From([]);

        Assert.Equal(ThinningSlope.Usual, none.Slope("thinner"));
        Assert.False(none.Tells("thinner"));
        Assert.Null(none.Expect(Read(1, 0, 30)));
        Assert.Equal(NoFigure.Undetermined, Assert.IsType<Finding<ThinningStep>.None>(none.More(Read(1, 0, 24), Cup, "thinner")).Kind);
    }

    [Fact]
    public void Two_readings_of_one_batch_weigh_with_common_practice_by_how_sure_each_is()
    {
        // By hand: the batch and the mixture cancel in the difference of two readings, of sd √2·ln 1.1; slope = (−5/2.5² + Δ·φ/σ²)/(1/2.5² + φ²/σ²).
        // The mixture's own intercept is all but free, so three digits hold.
        const double share = 0.10;
        var fall = Math.Log(102.0635 / 136.7135);               // Ford 4, 31 and 40 s: 3.85·(t − 4.49)
        var variance = 2 * Math.Pow(Math.Log(1.1), 2);
        var expected = (-5 / 6.25 + fall * share / variance) / (1 / 6.25 + share * share / variance);

        var learnt = OwnFlow.From([Read(1, 0, 40), Read(1, share, 31)]).Slope("thinner");

        Assert.Equal(expected, learnt.Mean, 0.01);
        Assert.Equal(Math.Sqrt(1 / (1 / 6.25 + share * share / variance)), learnt.Deviation, 0.01);
    }

    [Fact]
    public void A_warmer_day_reads_thinner_by_two_to_three_in_a_hundred_a_degree()
    {
        // handbook figure of water-borne paint, from memory
        var own = OwnFlow.From([Read(1, 0, 40, 20)]);

        var fall = own.Expect(Read(1, 0, 40, 20))!.Value.Middle - own.Expect(Read(1, 0, 40, 24))!.Value.Middle;

        Assert.InRange(fall / 4, 0.02, 0.03);
    }

    [Fact]
    public void How_much_more_takes_the_batch_to_the_reading_that_is_wanted()
    {
        var own = OwnFlow.From([Read(1, 0, 40), Read(1, 0.05, 32), Read(1, 0.10, 26)]);
        var step = Found(own.More(Read(1, 0.10, 24), Cup, "thinner"));

        // What is put in is to take the expectation to the target.
        var share = (0.10 * 200 + step.More.Millilitres) / (200 + step.More.Millilitres);
        Assert.Equal(Math.Log(3.85 * (24 - 4.49)), own.Expect(Read(1, share, 24))!.Value.Middle, 6);
        Assert.True(step.Low < step.More && step.More < step.High);
    }

    [Fact]
    public void Too_thin_already_it_takes_more_of_the_mixture_itself()
    {
        var own = OwnFlow.From([Read(1, 0, 40), Read(1, 0.05, 32), Read(1, 0.10, 26)]);

        Assert.Equal(NoFigure.WrongDirection, Assert.IsType<Finding<ThinningStep>.None>(own.More(Read(1, 0.10, 32), Cup, "thinner")).Kind);
        var step = Found(own.More(Read(1, 0.10, 32), Cup, null));
        Assert.Equal(Math.Log(3.85 * (32 - 4.49)), own.Expect(Read(1, 20 / (200 + step.More.Millilitres), 32))!.Value.Middle, 6);
    }

    [Fact]
    public void A_reading_sixty_times_as_thick_is_a_slip_and_left_out()
    {
        var own = OwnFlow.From([Read(1, 0, 40), Read(2, 0, 39), Read(3, 0, 42), Trace(4, 1.5), Trace(5, 90), Trace(6, 1.4), Trace(7, 1.6)]);

        Assert.Equal([4], own.Slips);
        Assert.Empty(own.Mended);
        Assert.Equal(6, own.Used.Count);
    }

    // 15 s for 1.5 s; 400 s for 40 s, which a Ford cup can't tell
    [Fact]
    public void A_digit_that_slipped_counts_as_it_was_meant_once_the_others_tell_what_was()
    {
        var meant = OwnFlow.From([Read(1, 0, 40), Read(2, 0, 39), Read(3, 0, 42), Trace(4, 1.5), Trace(5, 1.5), Trace(6, 1.4), Trace(7, 1.6)]);
        var typed = OwnFlow.From([Read(1, 0, 400), Read(2, 0, 39), Read(3, 0, 42), Trace(4, 1.5), Trace(5, 15), Trace(6, 1.4), Trace(7, 1.6)]);

        Assert.Equal([0, 4], typed.Mended);
        Assert.Empty(typed.Slips);
        Assert.Equal(7, typed.Used.Count);
        Assert.Equal(meant.Expect(Trace(9, 1))!.Value.Middle, typed.Expect(Trace(9, 1))!.Value.Middle, 6);
        Assert.Equal(meant.Expect(Read(9, 0, 40))!.Value.Middle, typed.Expect(Read(9, 0, 40))!.Value.Middle, 6);
    }

    [Fact]
    public void Where_nothing_else_tells_no_digit_is_mended()
    {
        Assert.Equal([0], OwnFlow.From([Read(1, 0, 400)]).Slips);       // no other reading of it
        Assert.Equal([0], OwnFlow.From([Read(1, 0, 400), Trace(4, 1.5), Trace(6, 1.4)]).Slips);    // of another mixture only
    }

    [Fact]
    public void The_share_for_today_falls_as_it_warms()
    {
        var own = OwnFlow.From([
            Read(1, 0.20, 30), Read(1, 0.25, 24), Read(2, 0.20, 31), Read(2, 0.25, 25), Read(3, 0.20, 29), Read(3, 0.25, 23)]);

        var (cool, warm) = (Share(own, 20), Share(own, 26));

        Assert.Equal(0.25, cool, 0.01);     // as it was read last in each batch, at 20 °C
        Assert.Equal(0.025 * 6 / -own.Slope("thinner").Mean, cool - warm, 0.008);
        Assert.Null(own.ShareAt("another", "thinner", Temperature.FromCelsius(20)));
    }

    private static double Share(OwnFlow own, double celsius) => own.ShareAt("medium", "thinner", Temperature.FromCelsius(celsius))!.Value.Middle;

    private static ThinningStep Found(Finding<ThinningStep> finding) => Assert.IsType<Finding<ThinningStep>.Found>(finding).Value;

    private static MixtureReading Read(int batch, double share, double seconds, double celsius = 20) => new(
        "medium",
        batch,
        new Dictionary<string, double> { ["thinner"] = share },
        new FlowReading.OfCup(Ford4, TimeSpan.FromSeconds(seconds), Temperature.FromCelsius(celsius)));

    private static MixtureReading Trace(int batch, double seconds) => new(
        "ocean", batch, new Dictionary<string, double>(), new FlowReading.OfTrace(new Trace(TimeSpan.FromSeconds(seconds)), Temperature.FromCelsius(20)));
}
