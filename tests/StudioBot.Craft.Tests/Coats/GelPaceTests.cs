using StudioBot.Craft.Coats;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Coats;

/// <summary>A sheet of 40 min at 21 °C (from memory); a speed at 16 °C of exp(55/R·(1/294.15 − 1/289.15)) = 0.678 by hand.</summary>
public sealed class GelPaceTests
{
    private static readonly DateTimeOffset Mixed = new(2026, 3, 2, 18, 0, 0, TimeSpan.Zero);
    private static readonly PotLife Sheet = new(TimeSpan.FromMinutes(40), Temperature.FromCelsius(21));

    [Theory]
    [InlineData(40, 21, 40)]
    [InlineData(40, 16, 59)]    // 40 / 0.678
    public void A_report_stands_beside_the_sheet_as_warm_as_it_was(double minutes, double celsius, double sheet)
    {
        var report = Told(minutes, celsius)!;

        Assert.Equal(minutes, report.After.TotalMinutes, 6);
        Assert.Equal(sheet, report.Sheet.TotalMinutes, 0.05);
    }

    [Theory]
    [InlineData(-1, 21)]
    [InlineData(0, 21)]
    [InlineData(30, 9)]         // below 10 °C no figure
    public void What_came_before_the_mixing_or_lay_too_cold_tells_nothing(double minutes, double celsius) => Assert.Null(Told(minutes, celsius));

    [Fact]
    public void Quick_ones_shorten_the_sheets_time_the_more_the_more_they_are()
    {
        // Summed by another program (CurePaceTests): eight of 0.7 make 0.731.
        var once = Of(28);
        var often = Of([.. Enumerable.Repeat(28.0, 8)]);

        Assert.Equal(0.7312, often.Factor, 3);
        Assert.InRange(once.Factor, often.Factor, 1);
        var sheet = new WorkingTime(TimeSpan.FromMinutes(40), TimeSpan.FromMinutes(38), TimeSpan.FromMinutes(42));
        Assert.Equal(40 * 0.7312, often.Over(sheet).Likely.TotalMinutes, 0.05);
    }

    [Fact]
    public void Whatever_is_told_the_time_is_never_longer_than_the_sheets()
    {
        var random = new Random(20261129);
        var sheet = new WorkingTime(TimeSpan.FromMinutes(40), TimeSpan.FromMinutes(38), TimeSpan.FromMinutes(42));
        for (var run = 0; run < 500; run++)
        {
            double[] minutes = [.. Enumerable.Range(0, random.Next(8)).Select(_ => 40 * Math.Exp(6 * random.NextDouble() - 3))];
            var over = Of(minutes).Over(sheet);

            Assert.True(
                over.Likely <= sheet.Likely && over.Shortest <= sheet.Shortest && over.Longest <= sheet.Longest && over.Shortest > TimeSpan.Zero,
                $"run {run} of seed 20261129: {string.Join(", ", minutes)}: {over}");
        }
    }

    [Fact]
    public void A_figure_that_slipped_by_ten_is_left_out()
    {
        Assert.True(GelPace.IsSlip(Told(400, 21)!) && GelPace.IsSlip(Told(4, 21)!) && !GelPace.IsSlip(Told(20, 21)!));
        Assert.Equal(Of(30, 32, 31), Of(30, 320, 32, 3.1, 31));
    }

    [Fact]
    public void The_last_three_tell_when_all_lie_on_one_side_of_the_sheet()
    {
        Assert.Equal(-8, Of(31, 32, 33).Trend!.Value.TotalMinutes, 6);          // the middle of 9, 8 and 7 before
        Assert.Equal(10, Of(25, 48, 50, 55).Trend!.Value.TotalMinutes, 6);      // the last three alone
        Assert.Null(Of(32, 41, 33).Trend);
        Assert.Null(Of(31, 32).Trend);
    }

    private static GelPace Of(params double[] minutes) => GelPace.From(minutes.Select(one => Told(one, 21)!));

    private static GelReport? Told(double minutes, double celsius) => GelReport.Of(
        Mixed, Mixed.AddMinutes(minutes), Sheet, [new FilmReading(Mixed, Temperature.FromCelsius(celsius))]);
}
