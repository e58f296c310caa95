using StudioBot.Chat.Tests.Support;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Tests.Recording;

/// <summary>Figures are worked by hand from the invented studio: 950 ml of medium, and 400 ml of batch 14.</summary>
public sealed class BatchBinTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Sample();

    public BatchBinTests() => studio.Tells("mix medium 400 ml");

    public void Dispose() => studio.Dispose();

    [Fact]
    public void What_is_left_of_it_leaves_the_shelf()
    {
        studio.Tells("count medium 1300 ml");       // 50 ml less, of the oldest: M-6

        // 300 ml of the base at 59.80 for 5 L and 100 ml of varnish at 33.60 for 2 L: 3.59 + 1.68
        Assert.Equal(
            "Batch 14: 400 ml thrown away: sour.\n900 ml medium left.\nBooked: 5.27 borne by use.",
            studio.Tells("batch 14 bin sour"));
        Assert.Equal(900, studio.Level("medium"));
        Assert.Contains(studio.Look(view => view.Stock.Entries()), line => line is { Reason: StockReason.Binned, Fills: false });
    }

    [Fact]
    public void Only_what_stands_on_the_shelf_is_thrown_away()
    {
        studio.Tells("batch 14 bin");
        Assert.Contains("Nothing is left of batch 14", studio.Refuses("batch 14 bin").PlainText, StringComparison.Ordinal);
        Assert.Contains("stands in no stock", studio.Refuses("batch 13 bin sour").PlainText, StringComparison.Ordinal);
    }

    [Fact]
    public void It_can_be_taken_back() => studio.IsUndone("batch 14 bin sour");
}
