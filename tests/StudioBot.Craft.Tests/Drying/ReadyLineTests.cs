using StudioBot.Craft.Drying;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Drying;

public sealed class ReadyLineTests
{
    [Fact]
    public void A_rough_scale_cannot_see_the_end()
    {
        // Common practice: 1 % of 95 g of water is 0.95 g, and two deviations must fit in it.
        Assert.True(ReadyLine.IsSeenBy(Mass.FromGrams(0.4), Mass.FromGrams(95)));
        Assert.False(ReadyLine.IsSeenBy(Mass.FromGrams(0.5), Mass.FromGrams(95)));
    }

    [Fact]
    public void What_is_past_the_line_is_there_already() =>
        Assert.Equal(TimeSpan.Zero, ReadyLine.TimeTo(Mass.FromGrams(1), Mass.FromGrams(0.9), TimeSpan.FromHours(24)));

    [Fact]
    public void The_last_molecule_never_leaves() => Assert.Throws<ArgumentOutOfRangeException>(
        () => ReadyLine.TimeTo(default, Mass.FromGrams(1), TimeSpan.FromHours(24)));
}
