using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Sharing;

public sealed class OpenedCommandTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void Its_shelf_life_runs_from_that_day()
    {
        studio.Tells("material hardener B keeps 180 days");

        // 25 Nov and 180 days: 5 + 31 + 31 + 28 + 31 + 30 = 156 to the end of April, 24 more
        Assert.Equal(
            "Lot H-12: open since 25 Nov.\nHardener B, 1000 ml left; it keeps until 24 May.",
            studio.Tells("opened H-12"));
        Assert.Equal(studio.Now, studio.Look(view => view.Lots.All().Single(lot => lot.Label == "H-12").OpenedAt));
    }

    [Fact]
    public void A_day_can_be_named() =>
        Assert.StartsWith("Lot H-12: open since 24 Nov.", studio.Tells("opened H-12 yesterday"), StringComparison.Ordinal);

    [Fact]
    public void What_is_open_is_not_opened_again()
    {
        studio.Tells("opened H-12");
        Assert.StartsWith("Lot H-12 is open since 25 Nov.", studio.Refuses("opened H-12").PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void It_can_be_taken_back()
    {
        studio.Tells("opened H-12");
        Assert.True(studio.Say("undo").Recorded);
        Assert.Null(studio.Look(view => view.Lots.All().Single(lot => lot.Label == "H-12").OpenedAt));
    }
}
