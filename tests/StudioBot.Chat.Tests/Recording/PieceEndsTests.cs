using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Costs;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Tests.Recording;

public sealed class PieceEndsTests : IDisposable
{
    private readonly LiveStudio _studio = LiveStudio.Sample();

    public void Dispose() => _studio.Dispose();

    [Fact]
    public void A_sale_keeps_price_share_and_words()
    {
        var reply = _studio.Hear("sold 14 85 gallery 40%");
        Assert.Contains("\nNoted: gallery.\n", reply, StringComparison.Ordinal);

        Assert.StartsWith("14 is sold for 85.00 EUR.", reply, StringComparison.Ordinal);
        Assert.Contains("The maker's share  51.00", reply, StringComparison.Ordinal);   // 85.00 less 34.00
        Assert.Equal(new PieceEvent.Sold(new Money(8500), 40, "gallery"), Last(14));
        Assert.Empty(_studio.Look(view => view.Money.Entries()));
    }

    [Fact]
    public void One_sum_for_several_is_split_to_the_cent()
    {
        _studio.Say("sold 3 6 8 for 100 together", agreed: true);

        Assert.Equal(
            [3334, 3333, 3333],
            new[] { 3, 6, 8 }.Select(number => ((PieceEvent.Sold)Last(number)).Price.Cents));
    }

    [Fact]
    public void A_kept_piece_is_kept()
    {
        Assert.StartsWith("17 is kept.\nIt is still drying", _studio.Hear("kept 17"), StringComparison.Ordinal);
        Assert.Equal(Stage.Kept, _studio.Look(view => view.Pieces.Find(17)!.Stage));
    }

    [Fact]
    public void A_piece_given_up_keeps_the_reason()
    {
        Assert.StartsWith("18 is in the bin: cracked.", _studio.Hear("bin 18 cracked"), StringComparison.Ordinal);
        Assert.Equal(new PieceEvent.Bin("cracked"), Last(18));
    }

    [Theory]
    [InlineData("sold 1 85", "1 is sold already. Nothing recorded.")]
    [InlineData("sold 17", "The price is missing. Nothing recorded.")]
    [InlineData("sold 14 85 usd", "This studio counts in EUR, not USD. Nothing recorded.")]
    [InlineData("kept 2", "2 is kept already. Nothing recorded.")]
    [InlineData("kept 1", "1 is sold: it can't be kept here. Nothing recorded.")]
    [InlineData("bin 4", "4 is in the bin already. Nothing recorded.")]
    [InlineData("bin 1", "1 is sold: it can't be given up. Nothing recorded.")]
    public void What_holds_is_named(string words, string trouble) =>
        Assert.StartsWith(trouble, _studio.Hear(words), StringComparison.Ordinal);

    private PieceEvent Last(int number) => _studio.Look(view => view.Pieces.Lines(number))[^1].What;
}
