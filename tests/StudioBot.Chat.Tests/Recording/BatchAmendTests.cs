using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Recording;

/// <summary>Figures are worked by hand from the invented studio: 410 ml of thinner in T-2, 950 ml of medium.</summary>
public sealed class BatchAmendTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public BatchAmendTests() => studio.Tells("mix medium 400 ml");    // batch 14

    public void Dispose() => studio.Dispose();

    [Fact]
    public void What_is_added_leaves_the_shelf_and_the_batch_grows()
    {
        Assert.Equal(
            "Batch 14: 30 ml thinner added, 430 ml left of it.\nThinner: 380 ml left, from T-2.",
            studio.Tells("batch 14 added 30 ml thinner"));
        Assert.Equal((380, 1380), (studio.Level("thinner"), studio.Level("medium")));   // 950 + 400 + 30
    }

    [Fact]
    public void A_powder_adds_the_room_of_its_grains()
    {
        // 14 g at 2.8 g/ml
        Assert.StartsWith("Batch 14: 14 g gold mica added, 405 ml left of it.", studio.Tells("batch 14 added 14 g gold mica"), StringComparison.Ordinal);
        Assert.Equal((24, 1355), (studio.Level("gold mica"), studio.Level("medium")));
    }

    [Fact]
    public void A_batch_older_than_the_books_grows_nowhere()
    {
        Assert.Contains("nothing grows", studio.Tells("batch 13 added 30 ml thinner"), StringComparison.Ordinal);
        Assert.Equal((380, 1350), (studio.Level("thinner"), studio.Level("medium")));
    }

    [Fact]
    public void What_is_not_there_is_not_added()
    {
        var reply = studio.Refuses("batch 14 added 500 ml thinner");

        Assert.StartsWith("Thinner is short: 410 ml in use here, 500 ml asked. Nothing recorded.", reply.PlainText, StringComparison.Ordinal);
        Assert.Equal("batch 14 added 410 ml thinner", Assert.Single(reply.Buttons).Line);
    }

    [Theory]
    [InlineData("batch 14 added 8 cups", "goes into no batch")]
    [InlineData("batch 99 added 30 ml thinner", "is no batch here")]
    public void What_makes_no_sense_is_refused(string words, string why) =>
        Assert.Contains(why, studio.Refuses(words).PlainText, StringComparison.Ordinal);

    [Fact]
    public void Nothing_is_added_to_what_was_thrown_away()
    {
        studio.Tells("batch 14 bin sour");
        Assert.Contains("Nothing is left of batch 14", studio.Refuses("batch 14 added 30 ml thinner").PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void It_can_be_taken_back() => studio.IsUndone("batch 14 added 30 ml thinner");
}
