using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Learning;

/// <summary>Medium is 300 ml of neutral base and 100 ml of gloss varnish in the invented studio. Common practice: 3:1 in the cold, 4:1 in the heat.</summary>
public sealed class RatioTodayTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void At_first_it_is_common_practice_for_the_warmth_of_the_room()
    {
        Tells("room 15C 50%");
        Assert.Contains("At 15 °C about 3:1; common practice: 3:1 cold, 4:1 warm.", studio.Hear("recipe medium"), StringComparison.Ordinal);

        Tells("room 28C 50%");
        Assert.Contains("At 28 °C about 4:1;", studio.Hear("recipe medium"), StringComparison.Ordinal);
        Assert.Contains("At 28 °C about 4:1;", studio.Hear("ratio 3:1 have 60 medium 25 thinner"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_room_that_was_read_long_ago_is_not_todays()
    {
        studio.Now += TimeSpan.FromDays(2);
        Assert.Contains("At 20 °C (assumed) about 3.4:1;", studio.Hear("recipe medium"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("recipe ocean")]
    [InlineData("ratio 3:1 250 ml")]
    [InlineData("ratio 2:1 have 80 A")]
    public void Other_mixtures_have_no_such_ratio(string words) =>
        Assert.DoesNotContain("4:1 warm", studio.Hear(words), StringComparison.Ordinal);

    [Fact]
    public void Three_batches_that_were_read_with_more_varnish_put_in_make_it_the_studios_own()
    {
        Tells("room 20C 50%");
        foreach (var batch in new[] { 14, 15, 16 })
        {
            Tells("mix medium 200 ml ford4 40 s 20C");
            Tells($"batch {batch} added 20 ml gloss varnish");      // 70 of 220: 2.1:1
            Tells($"batch {batch} ford4 28 s 20C");
        }

        var said = studio.Hear("recipe medium");

        Assert.Matches(@"At 20 °C about 2\.\d:1 flows as you like it \(\d\.?\d?:1 to \d\.?\d?:1\), by your 6 readings since today\.", said);
        Tells("room 26C 50%");
        Assert.True(Parts(studio.Hear("recipe medium")) > Parts(said));
    }

    private static double Parts(string said) => double.Parse(said.Split("about ")[1].Split(':')[0], null);

    private void Tells(string words)
    {
        studio.Now += TimeSpan.FromMinutes(2);
        studio.Tells(words);
    }
}
