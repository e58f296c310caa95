using CsCheck;
using MathNet.Numerics.Statistics;
using StudioBot.Craft.Pours;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Pours;

public sealed class FilmEstimateTests
{
    private static readonly FilmPrior Prior = new(Mm(3.0), FilmPrior.UsualWeight, FilmPrior.UsualSpread);
    private static readonly Length Usual = RunOff.FaceOverRim(RunOff.Reference);

    [Fact]
    public void Without_own_pours_the_technique_speaks()
    {
        // 2.5 mm and a fifth over on a 30 cm square: q = h·(1 + r)
        var estimate = FilmEstimate.From(FilmPrior.Of(Techniques.Bloom, RunOff.Reference), [], Usual);

        Assert.Equal(3.0, estimate.Mean.Millimetres, 1e-9);
        Assert.Equal(0, estimate.OwnPours);
    }

    [Fact]
    public void A_short_pour_pulls_the_film_up_further_than_its_own_figure()
    {
        // prior 3.0 (worth 4), 3.2 and 3.0 enough: left out 3.033, averaged in 3.086, as a lower bound 3.132
        // (posterior on a grid, computed apart from this code)
        var enough = FilmEstimate.From(Prior, [Pour(3.2), Pour(3.0)]);
        var averaged = FilmEstimate.From(Prior, [Pour(3.2), Pour(3.0), Pour(3.4)]);
        var bound = FilmEstimate.From(Prior, [Pour(3.2), Pour(3.0), Pour(3.4, PourEnd.RanShort)]);

        Assert.Equal(3.033, enough.Mean.Millimetres, 0.001);
        Assert.Equal(3.086, averaged.Mean.Millimetres, 0.001);
        Assert.Equal(3.132, bound.Mean.Millimetres, 0.001);
    }

    [Fact]
    public void A_pour_that_ran_short_never_makes_the_film_thinner() =>
        Gen.Select(Gen.Double[1, 6].Array[0, 8], Gen.Double[0.5, 8]).Sample((enough, tooLittle) =>
        {
            List<ObservedPour> pours = [.. enough.Select(used => Pour(used))];
            var without = FilmEstimate.From(Prior, pours);
            var with = FilmEstimate.From(Prior, [.. pours, Pour(tooLittle, PourEnd.RanShort)]);
            Assert.True(with.Mean.Millimetres >= without.Mean.Millimetres - 1e-3);
        });

    [Fact]
    public void From_five_pours_on_their_own_scatter_counts()
    {
        // σ² = (4·0.5² + SS + 4·5/9·(x̄ − 3)²)/(4 + 5) with x 2.9, 3.0, 3.1, 3.0, 3.0: SS 0.02, x̄ 3.0
        double[] used = [2.9, 3.0, 3.1, 3.0, 3.0];
        var four = FilmEstimate.From(Prior, [.. used.Take(4).Select(x => Pour(x))]);
        var five = FilmEstimate.From(Prior, [.. used.Select(x => Pour(x))]);

        Assert.Equal(0.5, four.Spread.Millimetres, 1e-12);
        Assert.Equal(Math.Sqrt((1 + 0.02) / 9), five.Spread.Millimetres, 1e-9);
    }

    [Fact]
    public void Many_pours_outweigh_the_technique() =>
        Gen.Double[2, 5].Array[400].Sample(used =>
        {
            var estimate = FilmEstimate.From(Prior, [.. used.Select(x => Pour(x))]);
            Assert.Equal(used.Mean(), estimate.Mean.Millimetres, 0.03);
            Assert.Equal(used.StandardDeviation(), estimate.Spread.Millimetres, 0.03);
        });

    [Fact]
    public void Only_pieces_alike_teach_a_piece()
    {
        var tile = new Surface.Panel(Length.FromCentimetres(10), Length.FromCentimetres(10));
        var onTile = new ObservedPour(Mm(5), RunOff.FaceOverRim(tile));

        var estimate = FilmEstimate.From(Prior, [Pour(3.2), onTile], Usual);

        Assert.Equal(1, estimate.OwnPours);
        Assert.Equal((4 * 3.0 + 3.2) / 5, estimate.Mean.Millimetres, 1e-9);
    }

    [Fact]
    public void Where_no_piece_is_alike_the_others_teach_with_less_certainty()
    {
        var tile = new Surface.Panel(Length.FromCentimetres(10), Length.FromCentimetres(10));

        var estimate = FilmEstimate.From(Prior, [Pour(3.2)], RunOff.FaceOverRim(tile));

        Assert.Equal(1, estimate.OwnPours);
        Assert.Equal(0.75, estimate.Spread.Millimetres, 1e-9); // half as wide again as 0.5 mm
    }

    private static ObservedPour Pour(double used, PourEnd end = PourEnd.Enough) => new(Mm(used), Usual, end);

    private static Length Mm(double value) => Length.FromMillimetres(value);
}
