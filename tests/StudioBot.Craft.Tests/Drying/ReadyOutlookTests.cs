using StudioBot.Craft.Drying;
using StudioBot.Craft.Tests.Whole;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Drying;

public sealed class ReadyOutlookTests
{
    private static readonly DryingPiece Usual = new(Length.FromMillimetres(2.5), Mass.FromGrams(150))
    {
        Deviation = Mass.FromGrams(0.1),
    };

    [Fact]
    public void A_fresh_piece_has_days_that_rest_on_practice()
    {
        var estimate = Expected(Of(Usual, 0));

        Assert.True(estimate.Grounds.IsPracticeOnly);
        Assert.True(estimate.Earliest < estimate.Likely && estimate.Likely < estimate.Latest);
        Assert.Equal(ReadyAdvice.Wait, estimate.Advice);
    }

    [Fact]
    public void In_wet_air_there_is_no_day() => Assert.Equal(NoReadyDay.AirTooDamp, NoDay(Of(Usual, 3, 20, 99)).Kind);

    [Fact]
    public void In_the_cold_there_is_no_day() => Assert.Equal(NoReadyDay.TooCold, NoDay(Of(Usual, 3, 9, 40)).Kind);

    [Fact]
    public void Too_far_off_says_only_not_before()
    {
        var outlook = NoDay(Of(new DryingPiece(Length.FromMillimetres(6), Mass.FromGrams(300)), 0));

        Assert.Equal(NoReadyDay.TooFarOff, outlook.Kind);
        Assert.True(outlook.NotBefore > TimeSpan.FromDays(14));
    }

    [Fact]
    public void A_piece_nobody_looked_at_is_overdue_until_somebody_says_a_word()
    {
        // Common practice: nine of ten are ready at 16.6 equivalent days; twice that is 33.
        Assert.Equal(NoReadyDay.Overdue, NoDay(Of(Usual, 34)).Kind);
        Assert.IsType<ReadyOutlook.Expected>(Of(Usual, 32));
        Assert.IsType<ReadyOutlook.Expected>(
            Of(Usual with { Words = [new MakerWord(TimeSpan.FromDays(30), MakerSays.NotYet)] }, 34));
    }

    [Fact]
    public void A_weight_that_rose_gives_no_day_and_does_not_bring_it_nearer()
    {
        var piece = Weighed((3, 640.4), (5, 628.9), (7, 629.3));
        var before = Weighed((3, 640.4), (5, 628.9));

        Assert.Equal(NoReadyDay.MassRose, NoDay(Of(piece, 7)).Kind);
        Assert.Equal(
            new ReadyPosterior(before, StudioShift.Untaught).Quantile(0.5),
            new ReadyPosterior(piece, StudioShift.Untaught).Quantile(0.5));
    }

    [Fact]
    public void A_rise_within_the_scales_doubt_is_none() =>
        Assert.IsType<ReadyOutlook.Expected>(Of(Weighed((3, 640.4), (5, 615.0), (7, 615.2)), 7));

    [Fact]
    public void Weighings_before_the_skin_closed_are_noted_and_not_used()
    {
        // Common practice: the skin of 2.5 mm has closed after a day and a half.
        var grounds = Expected(Of(Weighed((0.1, 700), (1, 670), (3, 640.4)), 4)).Grounds;

        Assert.Equal(WeighingsUse.TooFew, grounds.Use);
        Assert.Equal((0, 3), (grounds.Weighings, grounds.Noted));
    }

    [Fact]
    public void A_tile_on_a_kitchen_scale_is_not_judged_by_its_weighings()
    {
        var tile = new DryingPiece(Length.FromMillimetres(2.5), Mass.FromGrams(15))
        {
            Deviation = Mass.FromGrams(1),
            Weighings = [Weighing(3, 80), Weighing(5, 79), Weighing(8, 79)],
        };

        var estimate = Expected(Of(tile, 8));

        Assert.Equal(WeighingsUse.ScaleTooRough, estimate.Grounds.Use);
        Assert.Equal(
            new ReadyPosterior(tile with { Weighings = [] }, StudioShift.Untaught).ProbabilityAt(TimeSpan.FromDays(8)),
            estimate.Probability,
            12);
    }

    [Fact]
    public void Days_are_rounded_outward_and_never_before_today()
    {
        var today = new DateOnly(2026, 3, 2);
        var estimate = Expected(Of(Usual, 0)) with
        {
            Earliest = TimeSpan.FromDays(0.9),
            Likely = TimeSpan.FromDays(2.4),
            Latest = TimeSpan.FromDays(5.1),
        };

        Assert.Equal(today, estimate.EarliestDay(today));
        Assert.Equal(today.AddDays(2), estimate.LikelyDay(today));
        Assert.Equal(today.AddDays(6), estimate.LatestDay(today));
    }

    [Theory]
    // Common practice: seven of ten ask for a hand, nine of ten are likely ready.
    [InlineData(0.69, ReadyAdvice.Wait)]
    [InlineData(0.70, ReadyAdvice.CheckByHand)]
    [InlineData(0.90, ReadyAdvice.LikelyReady)]
    public void The_odds_say_what_to_do(double probability, ReadyAdvice advice) =>
        Assert.Equal(advice, (Expected(Of(Usual, 0)) with { Probability = probability }).Advice);

    private static ReadyOutlook Of(DryingPiece piece, double elapsedDays, double celsius = 23, double percent = 50)
    {
        var air = Rooms.Of(celsius, percent);
        return ReadyOutlook.Of(
            piece, TimeSpan.FromDays(elapsedDays), RoomPace.Of(air), air, StudioShift.Untaught);
    }

    private static DryingPiece Weighed(params (double Day, double Grams)[] weighings) => Usual with
    {
        Weighings = [.. weighings.Select(one => Weighing(one.Day, one.Grams))],
    };

    private static Weighing Weighing(double day, double grams) => new(TimeSpan.FromDays(day), Mass.FromGrams(grams));

    private static ReadyEstimate Expected(ReadyOutlook outlook) =>
        Assert.IsType<ReadyOutlook.Expected>(outlook).Estimate;

    private static ReadyOutlook.NoDay NoDay(ReadyOutlook outlook) => Assert.IsType<ReadyOutlook.NoDay>(outlook);
}
