using StudioBot.Chat.Reading;

namespace StudioBot.Chat.Tests.Reading;

public sealed class NearestTests
{
    [Theory]
    [InlineData("amounts", "amounts", 0)]
    [InlineData("amunts", "amounts", 1)]     // a letter left out
    [InlineData("ammounts", "amounts", 1)]   // one too many
    [InlineData("amoutns", "amounts", 1)]    // two swapped
    [InlineData("anounts", "amounts", 1)]    // another one
    [InlineData("kitten", "sitting", 3)]     // the example of the textbooks
    public void Each_slip_counts_once(string typed, string meant, int slips)
    {
        Assert.Equal(slips, Nearest.Distance(typed, meant, 5));
        Assert.Equal(slips, Nearest.Distance(meant, typed, 5));
    }

    [Fact]
    public void Beyond_its_limit_a_distance_is_only_known_to_be_larger() =>
        Assert.True(Nearest.Distance("kitten", "sitting", 2) > 2);

    [Fact]
    public void All_that_are_as_near_are_found() =>
        Assert.Equal(["coat", "boat"], Nearest.All("goat", ["coat", "boat", "room"], 1));

    [Theory]
    [InlineData("ml", 0)]
    [InlineData("bloo", 1)]
    [InlineData("blooom", 2)]
    public void A_longer_word_may_hold_more_slips(string word, int reach) => Assert.Equal(reach, Nearest.Reach(word));
}
