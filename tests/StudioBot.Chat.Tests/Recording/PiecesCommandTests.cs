using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Tests.Recording;

public sealed class PiecesCommandTests : IDisposable
{
    private readonly SmallStudio studio = new();

    public void Dispose() => studio.Dispose();

    // the invented studio: 17 to 21 dry, 14 to 16 are dry
    [Theory]
    [InlineData("pieces drying", @"^5 drying\n21 C4 25cm panel +\d+ Nov–\d+ Dec\n17 B3")]
    [InlineData("what is drying", @"^5 drying")]
    [InlineData("ready", @"^3 ready\n14 B1 30cm panel  dry\n15 B1 25cm round  dry\n16 B2 20cm panel  dry")]
    [InlineData("my pieces", @"^Mira: 4 pieces\n17 B3 30cm panel .+Dec\n13 C3 40cm panel +cures\n1 20cm panel +sold\n7 15cm hexagon +sold")]
    [InlineData("pieces of Pia", @"^Pia: 7 pieces")]
    [InlineData("pieces of Pia drying", @"^Pia: 2 drying\n21 C4")]
    [InlineData("pieces binned", @"^1 in the bin\n4 10cm panel  binned")]
    [InlineData("pieces", @"^21 pieces\ndrying      5\nready       3\ncoated      4")]
    public void A_list_holds_shelf_and_days(string words, string pattern) =>
        Assert.Matches(pattern, Sample.Answer(words)!.PlainText.ReplaceLineEndings("\n"));

    [Theory]
    [InlineData("pieces")]
    [InlineData("pieces drying")]
    [InlineData("ready")]
    [InlineData("my pieces")]
    [InlineData("pieces coated")]
    [InlineData("pieces of Pia page 9")]
    public void A_list_fits_a_phone_and_its_buttons_are_answered(string words)
    {
        var reply = Sample.Answer(words)!;

        Fits(reply);
        Assert.All(reply.Buttons, button => Assert.False(Sample.Answer(button.Line)!.IsTrouble, button.Line));
    }

    [Fact]
    public void The_dry_ones_have_their_resin_a_button_away() =>
        Assert.Contains(Sample.Answer("ready")!.Buttons, button => button.Line == "resin pieces 14 15 16 2mm");

    [Fact]
    public void Three_hundred_pieces_are_a_page_at_a_time()
    {
        for (var i = 0; i < 300; i++)
        {
            studio.Pours(day: i / 100.0);
        }

        var seen = new HashSet<string>();
        var pages = 0;
        for (string? line = "pieces drying"; line is not null; pages++)
        {
            var reply = studio.Answers(line, 4);
            Fits(reply);
            seen.UnionWith(reply.Blocks.OfType<Block.Figures>().SelectMany(block => block.Rows).Select(row => row.Name));
            line = reply.Buttons.FirstOrDefault(button => button.Label == "Next page")?.Line;
        }

        Assert.Equal("ask", studio.Kind("pieces drying page 2", 4));
        Assert.Equal((300, 38), (seen.Count, pages));       // eight to a page
        Assert.StartsWith("300 drying, page 38 of 38", studio.Answers("pieces drying page 99", 4).PlainText, StringComparison.Ordinal);
        Assert.Contains(studio.Answers("pieces drying page 2", 4).Buttons, button => button is { Label: "Page before", Line: "pieces drying page 1" });
    }

    // 13 days in the reference room: four in five are dry by then
    [Fact]
    public void What_is_worth_a_hand_stands_with_the_ready_ones()
    {
        var old = studio.Reads("studio", 23, 50).Pours(shelf: "A1");
        studio.Pours(day: 12);
        var dry = studio.Pours();
        studio.Happens(dry, 12, new PieceEvent.Dry());

        Assert.StartsWith(
            $"1 ready, 1 to check by hand\n{dry} 30cm panel     dry 14 Nov\n{old} A1 30cm panel   check now\n",
            studio.Answers("ready", 13).PlainText.ReplaceLineEndings("\n"),
            StringComparison.Ordinal);
    }

    [Fact]
    public void Mine_are_those_of_who_asks()
    {
        var mine = studio.Pours(maker: "Pia");
        studio.Pours();

        var text = studio.Answers("my pieces", 1, "Pia").PlainText.ReplaceLineEndings("\n");
        Assert.StartsWith($"Pia: 1 piece\n{mine} 30cm panel", text, StringComparison.Ordinal);
    }

    [Fact]
    public void An_empty_studio_has_none()
    {
        Assert.Equal("0 pieces", studio.Answers("pieces", 0).PlainText);
        Assert.Equal("0 ready", studio.Answers("ready", 0).PlainText);
    }

    private static void Fits(Reply reply)
    {
        Assert.True(LineBudget.Of(reply) <= LineBudget.Lines, reply.PlainText);
        Assert.True(LineBudget.FiguresFit(reply), reply.PlainText);
        Assert.InRange(reply.Buttons.Count, 0, 6);
    }
}
