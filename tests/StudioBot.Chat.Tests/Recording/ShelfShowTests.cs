using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Units;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Tests.Recording;

public sealed class ShelfShowTests : IDisposable
{
    private readonly SmallStudio studio = new();

    public void Dispose() => studio.Dispose();

    // the invented studio: twelve places, all taken; cured and dry pieces may go at once, drying ones by their late end
    [Theory]
    [InlineData("shelf", @"^12 shelves, 0 free, page 1 of 2\nA1: 3 +now\n")]
    [InlineData("shelf", @"\nB3: 17 18  by \d+ Dec\n")]
    [InlineData("shelf page 2", @"page 2 of 2\nB4: 19 20 +by \d+ Dec\nC1: 10 11 +cures\n")]
    [InlineData("shelf B", @"^Shelf B: 7 pieces\nB1: 14 15 +now\n")]
    [InlineData("whats on shelf B", @"^Shelf B: 7 pieces")]
    [InlineData("shelf b3", @"^B3, studio\n17 30cm panel  .+ Dec\n18 30cm round")]
    [InlineData("where is 17?", @"^17: on B3, studio\nReady .+, likely .+\. Bloom, 30cm panel, by Mira\.")]
    [InlineData("where is 1?", @"^1: sold\nSwipe, 20cm panel, by Mira\.")]
    public void What_lies_where_and_what_comes_free_when(string words, string pattern) =>
        Assert.Matches(pattern, Sample.Answer(words)!.PlainText.ReplaceLineEndings("\n"));

    [Theory]
    [InlineData("shelf")]
    [InlineData("shelf page 2")]
    [InlineData("shelf B")]
    [InlineData("shelf C1")]
    [InlineData("where is 17?")]
    public void It_fits_a_phone_and_its_buttons_are_answered(string words)
    {
        var reply = Sample.Answer(words)!;

        Assert.True(LineBudget.Of(reply) <= LineBudget.Lines, reply.PlainText);
        Assert.True(LineBudget.FiguresFit(reply), reply.PlainText);
        Assert.InRange(reply.Buttons.Count, 0, 6);
        Assert.All(reply.Buttons, button => Assert.Equal("ask", Sample.Hear(button.Line).Kind));
        Assert.All(reply.Buttons, button => Assert.False(Sample.Answer(button.Line)!.IsTrouble, button.Line));
    }

    [Fact]
    public void A_shelf_nobody_put_up_is_trouble_and_shows_what_works()
    {
        var reply = Sample.Answer("shelf Q9")!;

        Assert.True(reply.IsTrouble);
        Assert.Equal("“Q9” is no shelf here.\nTry\n  shelf", reply.PlainText.ReplaceLineEndings("\n"));
    }

    // late end 22.2 days at 20 °C 55 %, outward: the 25th; a coat cures 7 days (common practice)
    [Fact]
    public void A_shelf_is_free_when_the_last_of_its_pieces_may_go()
    {
        studio.Reads("studio", 20, 55);
        var dry = studio.Pours(shelf: "A1");
        studio.Happens(dry, 0, new PieceEvent.Dry());
        Assert.Matches("A1: 1  now", studio.Answers("shelf", 0).PlainText);

        studio.Happens(dry, 0, new PieceEvent.Coated(new Coat(Volume.FromMillilitres(120), Volume.FromMillilitres(60))));
        Assert.Matches("A1: 1  by 9 Nov", studio.Answers("shelf", 0).PlainText);
        studio.Pours(shelf: "A1");
        var text = studio.Answers("shelf", 0).PlainText;
        Assert.Matches("A1: 1 2  by 25 Nov", text);
        Assert.StartsWith("3 shelves, 2 free", text, StringComparison.Ordinal);
        Assert.Contains("Free: A2, C1.", text, StringComparison.Ordinal);
        Assert.Equal("A2, studio: free", studio.Answers("shelf A2", 0).PlainText);
    }

    [Fact]
    public void What_lies_on_no_shelf_is_named_and_what_is_sold_lies_nowhere()
    {
        var loose = studio.Pours();
        var kept = studio.Pours(shelf: "A1");
        studio.Happens(kept, 1, new PieceEvent.Kept());
        var text = studio.Answers("shelf", 1).PlainText;

        Assert.Contains($"On no shelf: {loose}.", text, StringComparison.Ordinal);
        Assert.Contains("3 free", text, StringComparison.Ordinal);
        Assert.StartsWith($"{loose}: on no shelf", studio.Answers($"where is {loose}?", 1).PlainText, StringComparison.Ordinal);
        Assert.StartsWith($"{kept}: kept since 3 Nov", studio.Answers($"where is {kept}?", 1).PlainText, StringComparison.Ordinal);
    }
}
