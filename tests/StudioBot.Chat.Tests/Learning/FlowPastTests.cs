using System.Globalization;
using System.Text.RegularExpressions;
using StudioBot.Chat.Learning;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Learning;

/// <summary>How thinned batches read, against what was told before. A Ford 4 tells 3.85·(t − 4.49) mm²/s (ASTM D1200): 40 s are 136.7. 2 ml of
/// thinner into 100 ml of medium, a quarter of it varnish, are 1.96 % more thinner and 0.49 % less varnish: common practice (5 % for each per cent of
/// what thins) has 127.0 mm²/s; 34.3 s were read, 114.8: 11 % less than that.</summary>
public sealed class FlowPastTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void Thinned_batches_are_held_against_what_the_readings_before_said()
    {
        studio.Tells("bought 5 x 1 L neutral base 20.00");
        studio.Tells("bought 5 x 1 L gloss varnish 20.00");
        studio.Tells("bought 1 L thinner 9.00");
        for (var batch = 14; batch < 21; batch++)
        {
            studio.Now += TimeSpan.FromHours(3);
            studio.Tells("mix medium 100 ml ford4 40 s 20C");
            studio.Now += TimeSpan.FromMinutes(5);
            studio.Tells($"batch {batch} added 2 ml thinner");
            studio.Now += TimeSpan.FromMinutes(5);
            studio.Tells($"batch {batch} ford4 34.3 s 20C");
        }

        var lines = studio.Look(view => Backtest.Of(new Studio(view, Sample.Practice, isSample: false), studio.Now));
        var said = lines.Select(line => Regex.Match(
            line, @"^flow of thinned batches: 7, off by ([\d.]+) % in the middle, common practice by ([\d.]+) %; (\d+ %|all) came"))
            .Single(match => match.Success);
        Assert.InRange(Number(said, 2), 10, 11);
        Assert.True(Number(said, 1) < Number(said, 2), said.Value);
        Assert.Contains(said.Groups[3].Value, (string[])["86 %", "all"]);       // six of seven or all of them: eight in ten and more
        Assert.Equal(7, lines.Count(line => line.Contains(", flow of thinned batches: told ", StringComparison.Ordinal)));
        Assert.Contains("Thinned batches, 7", studio.Hear("studio accuracy"), StringComparison.Ordinal);
    }

    private static double Number(Match said, int at) => double.Parse(said.Groups[at].Value, CultureInfo.InvariantCulture);
}
