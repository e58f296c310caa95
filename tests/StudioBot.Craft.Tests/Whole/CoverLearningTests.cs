using StudioBot.Craft.Stock;
using Xunit.Abstractions;

namespace StudioBot.Craft.Tests.Whole;

/// <summary>Whether what is left lasts as long as is told of it, eight times of ten, on two hundred simulated studios: each uses a material on one
/// day of seven up to seven of ten, as much of it as chance has it (a gamma law of shape 1 to 4, common practice), and eight weeks of that are on
/// record. What is left would last one to eight weeks. The studios are drawn, their seed is printed and <c>STUDIOBOT_SEED</c> takes it back.</summary>
public sealed class CoverLearningTests(ITestOutputHelper output)
{
    private const int Studios = 200;
    private const int Weeks = 8;
    private const int Levels = 20;

    private static readonly int Seed = int.TryParse(Environment.GetEnvironmentVariable("STUDIOBOT_SEED"), out var said) ? said : 20261129;

    [Fact]
    public void Of_all_spans_eight_in_ten_hold()
    {
        List<(double Likely, double Lasted, CoverSpan Span, double Share)> all = [];
        for (var studio = 0; studio < Studios; studio++)
        {
            var random = new Random(Seed + studio);
            var (share, shape) = (1 / 7.0 + random.NextDouble() * (0.7 - 1 / 7.0), random.Next(1, 5));
            for (var level = 0; level < Levels; level++)
            {
                var use = DailyUse.From([.. Enumerable.Range(0, Weeks * 7).Select(_ => Day(share, shape, random))]);
                if (use.IsLittleData)
                {
                    continue;
                }

                var left = 10 * shape * share * (7 + random.NextDouble() * 49);
                all.Add((left / use.PerDay, Lasted(left, share, shape, random), CoverSpan.Of(left, use, Weeks * 7), share));
            }
        }

        var (seldom, often) = (all.Where(one => one.Share < 0.3).ToList(), all.Where(one => one.Share >= 0.3).ToList());
        output.WriteLine($"cover: seed {Seed}, {all.Average(Holds):0.0 %} of {all.Count} spans hold, {seldom.Average(Holds):0.0 %} where it is used "
            + $"on less than three days of ten, {often.Average(Holds):0.0 %} else; "
            + $"sooner {all.Average(one => one.Lasted < one.Span.Earliest.TotalDays ? 1 : 0.0):0.0 %}; "
            + $"off by {all.Select(one => Math.Abs(Math.Log(one.Likely / one.Lasted))).Order().ElementAt(all.Count / 2):0.000} in logs (median)");
        Assert.InRange(all.Average(Holds), 0.75, 0.85);
        Assert.InRange(seldom.Average(Holds), 0.75, 0.85);
        Assert.InRange(often.Average(Holds), 0.75, 0.85);
    }

    private static double Holds((double Likely, double Lasted, CoverSpan Span, double Share) one) =>
        one.Span.Earliest.TotalDays <= one.Lasted && one.Lasted <= (one.Span.Latest?.TotalDays ?? double.PositiveInfinity) ? 1 : 0;

    private static double Lasted(double left, double share, int shape, Random random)
    {
        for (var day = 0; ; day++)
        {
            var used = Day(share, shape, random);
            if (used >= left)
            {
                return day + left / used;
            }

            left -= used;
        }
    }

    // Shape exponentials added up, 10 each in the mean.
    private static double Day(double share, int shape, Random random) => random.NextDouble() >= share
        ? 0
        : Enumerable.Range(0, shape).Sum(_ => -10 * Math.Log(1 - random.NextDouble()));
}
