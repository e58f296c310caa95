using StudioBot.Craft.Coats;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Coats;

/// <summary>A sheet of common practice: opens 3 to 6 h, closes 12 to 24 h, handling 24 h, full cure 7 days at 21 °C; </summary>
public sealed class CurePaceTests
{
    private static readonly DateTimeOffset Poured = new(2026, 3, 2, 18, 0, 0, TimeSpan.Zero);
    private static readonly CureTimes Sheet = new(
        TimeSpan.FromHours(3), TimeSpan.FromHours(6), TimeSpan.FromHours(12), TimeSpan.FromHours(24),
        TimeSpan.FromHours(24), TimeSpan.FromDays(7), Temperature.FromCelsius(21));

    [Fact]
    public void Without_reports_the_sheet_stands()
    {
        Assert.Equal(CurePace.OfSheet, CurePace.From([]));
        var over = CurePace.OfSheet.Over(Sheet);
        Assert.Equal(3, over.OpensFrom.TotalHours, 6);
        Assert.Equal(6, over.OpensBy.TotalHours, 6);
        Assert.Equal((Sheet.ClosesFrom, Sheet.Handling, Sheet.FullCure), (over.ClosesFrom, over.Handling, over.FullCure));
    }

    [Fact]
    public void A_report_is_carried_to_the_sheets_temperature()
    {
        // √(3·6) = 4.243 h is the sheet's middle; at 16 °C it runs at exp(55/R·(1/294.15 − 1/289.15)) = 0.678
        Assert.Equal(1, Ratio(4.243, 21)!.Value, 3);
        Assert.Equal(0.678, Ratio(4.243, 16)!.Value, 3);
        Assert.Equal(2, Ratio(8.485, 21)!.Value, 3);
        Assert.Null(Ratio(4, 8));
        Assert.Null(Ratio(-1, 21));
    }

    [Fact]
    public void Reports_pull_the_pace_by_how_many_they_are()
    {
        // Summed by another program, the exponential folded with the normal by hand: one report of 1.5, eight of it, eight of 0.7, one of 2.
        Assert.Equal(1.1169, CurePace.From([1.5]).Factor, 3);
        Assert.Equal(1.4036, CurePace.From(Enumerable.Repeat(1.5, 8)).Factor, 3);
        Assert.Equal(0.7312, CurePace.From(Enumerable.Repeat(0.7, 8)).Factor, 3);
        Assert.Equal(1.1391, CurePace.From([2]).Factor, 3);
        Assert.True(CurePace.From(Enumerable.Repeat(1.5, 8)).Narrowing < CurePace.From([1.5]).Narrowing);
    }

    [Fact]
    public void A_late_report_among_prompt_ones_is_hardly_more_than_a_bound_but_one_too_early_counts()
    {
        double[] prompt = [.. Enumerable.Repeat(1.0, 6)];
        var (alone, late, early) = (CurePace.From(prompt).Factor, CurePace.From([.. prompt, 2.2]).Factor, CurePace.From([.. prompt, 1 / 2.2]).Factor);

        Assert.InRange(late / alone, 1, 1.03);
        Assert.True(alone / early > late / alone);
    }

    [Fact]
    public void Many_that_agree_are_believed_be_they_later_than_the_sheet() => Assert.InRange(CurePace.From(Enumerable.Repeat(1.6, 20)).Factor, 1.5, 1.6);

    [Fact]
    public void A_quicker_resin_opens_and_closes_earlier()
    {
        var over = CurePace.From(Enumerable.Repeat(0.7, 6)).Over(Sheet);

        Assert.True(over.OpensBy < Sheet.OpensBy && over.ClosesFrom < Sheet.ClosesFrom);
        Assert.Equal(Sheet.OpensFrom, over.OpensFrom);
        Assert.Equal((Sheet.Handling, Sheet.FullCure), (over.Handling, over.FullCure));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public void One_report_or_two_open_nothing_earlier(int reports)
    {
        var over = CurePace.From(Enumerable.Repeat(0.5, reports)).Over(Sheet);

        Assert.Equal((Sheet.OpensFrom, Sheet.OpensBy), (over.OpensFrom, over.OpensBy));
        Assert.True(over.ClosesFrom < Sheet.ClosesFrom);
    }

    [Fact]
    public void A_slower_one_opens_later_and_never_closes_later_than_the_sheet()
    {
        var over = CurePace.From(Enumerable.Repeat(1.6, 12)).Over(Sheet);

        Assert.True(over.OpensFrom > Sheet.OpensFrom);
        Assert.Equal((Sheet.ClosesFrom, Sheet.ClosesBy), (over.ClosesFrom, over.ClosesBy));
        Assert.True(over.Handling > Sheet.Handling && over.FullCure > Sheet.FullCure);
    }

    [Fact]
    public void Whatever_is_reported_the_close_that_is_announced_is_never_later_than_the_sheets()
    {
        var random = new Random(20261129);
        for (var run = 0; run < 1000; run++)
        {
            var over = CurePace.From(Enumerable.Range(0, random.Next(12)).Select(_ => Math.Exp(6 * random.NextDouble() - 3))).Over(Sheet);

            Assert.True(
                over.ClosesFrom <= Sheet.ClosesFrom && over.ClosesBy <= Sheet.ClosesBy && over.ClosesFrom <= over.ClosesBy,
                $"run {run} of seed 20261129: {over}");
            Assert.InRange(over.OpensFrom / Sheet.OpensFrom, 1, 2 * Math.Sqrt(2));
            Assert.True(over.OpensFrom <= over.OpensBy);
        }
    }

    [Fact]
    public void What_is_far_off_tells_of_a_fault_and_is_left_out() =>
        Assert.Equal(CurePace.From([1.1]), CurePace.From([1.1, 10, 0.1]));

    private static double? Ratio(double hours, double celsius) => CurePace.RatioOf(
        Poured.AddHours(hours), Sheet, Poured, [new FilmReading(Poured, Temperature.FromCelsius(celsius))]);
}
