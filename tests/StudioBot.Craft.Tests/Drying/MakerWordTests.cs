using StudioBot.Craft.Drying;

namespace StudioBot.Craft.Tests.Drying;

public sealed class MakerWordTests
{
    [Fact]
    public void Said_twice_within_half_a_day_counts_once()
    {
        var counting = MakerWord.Counting([NotYet(9), NotYet(9.4), NotYet(11)]);

        Assert.Equal([NotYet(9.4), NotYet(11)], counting);
    }

    [Fact]
    public void Not_yet_and_dry_within_half_a_day_both_count() =>
        Assert.Equal(2, MakerWord.Counting([NotYet(9), Dry(9.2)]).Count);

    [Fact]
    public void A_clear_coat_stands_in_place_of_the_earlier_dry()
    {
        var clear = new MakerWord(TimeSpan.FromDays(12), MakerSays.CoatCuredClear);

        Assert.Equal([NotYet(8), clear], MakerWord.Counting([NotYet(8), Dry(10), clear]));
    }

    [Fact]
    public void A_lifted_coat_speaks_against_dry() =>
        Assert.False(new MakerWord(TimeSpan.FromDays(10), MakerSays.CoatLifted).IsDry);

    private static MakerWord NotYet(double days) => new(TimeSpan.FromDays(days), MakerSays.NotYet);

    private static MakerWord Dry(double days) => new(TimeSpan.FromDays(days), MakerSays.Dry);
}
