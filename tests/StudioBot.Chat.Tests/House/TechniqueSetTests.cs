using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.House;

public sealed class TechniqueSetTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void The_studios_own_film_takes_the_place_of_the_trades()
    {
        var trade = Sample.Studio.Practice.Techniques.First(one => one.Name == "swipe").Laid.Usual;

        Assert.Equal(
            $"Swipe: 1.4 mm film from now on.\nIt was {trade.Millimetres:0.##} mm, common practice.",
            studio.Tells("technique swipe film 1.4mm"));
        Assert.Equal(1.4, studio.Look(view => view.Studio.TechniqueOverrides().Single(one => one.Name == "swipe").Laid!.Value.Millimetres), 6);
        Assert.Equal(
            $"Swipe: 1.6 mm film from now on.\nIt was 1.4 mm.\nCommon practice: {trade.Millimetres:0.##} mm.",
            studio.Tells("technique swipe film 1.6mm"));
    }

    [Fact]
    public void What_is_asked_next_goes_by_it()
    {
        var before = studio.Hear("amounts 30cm panel swipe");
        studio.Tells("technique swipe film 4mm");
        Assert.NotEqual(before, studio.Hear("amounts 30cm panel swipe"));
    }

    [Fact]
    public void It_can_be_taken_back()
    {
        studio.Tells("technique swipe film 1.4mm");
        Assert.True(studio.Say("undo").Recorded);
        Assert.Empty(studio.Look(view => view.Studio.TechniqueOverrides()));
    }
}
