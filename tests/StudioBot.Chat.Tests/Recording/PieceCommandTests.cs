using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Units;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Tests.Recording;

public sealed class PieceCommandTests : IDisposable
{
    private readonly SmallStudio studio = new();

    public void Dispose() => studio.Dispose();

    // 2.5 mm since the 21st in the room as read, 20 °C 55 %
    [Theory]
    [InlineData(@"^17: ready \d+ Nov–\d+ Dec, likely \d+ Dec")]
    [InlineData(@"Common practice, no weighings yet\.")]
    [InlineData(@"1 panel 30 × 30 cm: bloom, 6 colours, ocean, batch 12; Mira, 21 Nov\.")]
    [InlineData(@"On B3, studio 20 °C 55 %, film 2\.5 mm by technique\.")]
    [InlineData(@"21 Nov poured")]
    [InlineData(@"Invented studio")]
    public void The_record_of_a_piece_begins_with_its_days(string pattern) =>
        Assert.Matches(pattern, Sample.Answer("piece 17")!.PlainText);

    [Theory]
    [InlineData("17")]
    [InlineData("17 dry?")]
    [InlineData("is 17 dry?")]
    public void Its_number_alone_asks_for_it(string words) =>
        Assert.Equal(Sample.Answer("piece 17")!.PlainText, Sample.Answer(words)!.PlainText);

    [Fact]
    public void What_comes_next_stands_on_its_buttons()
    {
        Assert.Equal(
            ["dry 17", "notyet 17", "resin piece 17 2mm", "again 17 on 30cm panel"],
            Sample.Answer("piece 17")!.Buttons.Select(button => button.Line));
        Assert.Contains("resin piece 14 2mm", Lines("piece 14"));
        Assert.DoesNotContain("dry 14", Lines("piece 14"));
        Assert.Contains("kept 3", Lines("piece 3"));
        Assert.Equal(["again 1 on 20cm panel"], Lines("piece 1"));
        Assert.Equal("again 20 on 30x40cm panel 2cm deep", Lines("piece 20").Last());
    }

    [Fact]
    public void A_failed_coat_waits_for_sandpaper_and_one_that_stands_does_not()
    {
        var number = studio.Pours();
        Later(number, 17);
        Assert.DoesNotContain(studio.Answers($"piece {number}", 15).Buttons, button => button.Line == $"sand {number}");

        studio.Happens(number, 16, new PieceEvent.Failed("fisheyes"));
        Assert.Contains(studio.Answers($"piece {number}", 16).Buttons, button => button.Line == $"sand {number}");
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Every_piece_fits_a_phone_and_its_buttons_are_read(int number)
    {
        var reply = Sample.Answer($"piece {number}")!;

        Assert.False(reply.IsTrouble);
        Assert.True(LineBudget.Of(reply) <= LineBudget.Lines, reply.PlainText);
        Assert.All(reply.Buttons, button => Assert.NotEqual("error", Sample.Hear(button.Line).Kind));
    }

    public static TheoryData<int> All => [.. Enumerable.Range(1, 21)];

    [Fact]
    public void All_that_happened_stands_behind_a_button_and_fits_page_by_page()
    {
        var number = Eventful();
        var card = studio.Answers($"piece {number}", 30);
        Assert.True(LineBudget.Of(card) < LineBudget.Lines, card.PlainText);
        Assert.Contains("note: the last of them", card.PlainText, StringComparison.Ordinal);
        Assert.DoesNotContain("2 Nov poured", card.PlainText, StringComparison.Ordinal);

        var line = card.Buttons.Single(button => button.Label == "All that happened").Line;
        List<string> pages = [];
        while (line is not null)
        {
            Assert.Equal("ask", studio.Kind(line, 30));
            var page = studio.Answers(line, 30);
            Assert.True(LineBudget.Of(page) <= LineBudget.Lines, page.PlainText);
            pages.Add(page.PlainText);
            line = page.Buttons.FirstOrDefault(button => button.Label == "Next page")?.Line;
        }

        var all = string.Join('\n', pages);
        Assert.InRange(pages.Count, 2, 5);
        Assert.All(
            [
                "2 Nov poured 300 ml", "2 Nov on A1", "2 Nov left in cups 20 ml", "2 Nov ran off 40 ml", "2 Nov bare panel 400 g", "7 Nov weighed 640.4 g",
                "9 Nov not dry yet, wait to 11 Nov", "16 Nov dry by hand", "17 Nov coated, 120 ml A + 60 ml B", "18 Nov coat failed: fisheyes", "19 Nov sanded",
                "20 Nov promised for 24 Dec: for a customer", "note: the last of them",
            ],
            words => Assert.Contains(words, all, StringComparison.Ordinal));
    }

    [Fact]
    public void A_promise_before_the_late_end_is_warned_of_with_its_odds()
    {
        var number = studio.Reads("studio", 20, 55).Pours();
        studio.Happens(number, 0, new PieceEvent.Due(SmallStudio.Day(10.7), null, null));

        var early = studio.Answers($"piece {number}", 0).PlainText;
        Assert.Contains("! Promised for 13 Nov: only 50 % likely dry by then.", early, StringComparison.Ordinal);   // the middle: 10.7 days
        studio.Happens(number, 0, new PieceEvent.Due(SmallStudio.Day(40), null, null));
        Assert.Contains("\nPromised for 12 Dec.", studio.Answers($"piece {number}", 0).PlainText, StringComparison.Ordinal);
        Assert.Contains("! Promised for 12 Dec: that day is past.", studio.Answers($"piece {number}", 41).PlainText, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(16, "1: dry since 16 Nov, ready for a coat")]
    [InlineData(17, "1: coated 17 Nov, cured about 24 Nov")]     // 7 days, common practice
    [InlineData(18, "1: coat failed 18 Nov: sand it")]
    [InlineData(19, "1: sanded 19 Nov, ready for a coat")]
    public void The_headline_says_how_far_it_is(int november, string says)
    {
        var number = studio.Pours();
        Later(number, november);

        Assert.StartsWith(says, studio.Answers($"piece {number}", november - 2).PlainText, StringComparison.Ordinal);
    }

    private int Eventful()
    {
        var number = studio.Reads("studio", 20, 55).Pours(millilitres: 300, shelf: "A1");
        studio.Happens(number, 0, new PieceEvent.Left(Volume.FromMillilitres(20)))
            .Happens(number, 0, new PieceEvent.Caught(Volume.FromMillilitres(40)))
            .Happens(number, 0, new PieceEvent.Bare(Mass.FromGrams(400)))
            .Weighs(number, 5, 640.4)
            .Happens(number, 7, new PieceEvent.NotYet(SmallStudio.Day(9)));
        Later(number, 19);
        return Noted(number);
    }

    private void Later(int number, int november)
    {
        (int Day, PieceEvent What)[] events =
        [
            (16, new PieceEvent.Dry()),
            (17, new PieceEvent.Coated(new Coat(Volume.FromMillilitres(120), Volume.FromMillilitres(60)))),
            (18, new PieceEvent.Failed("fisheyes")),
            (19, new PieceEvent.Sanded()),
        ];
        foreach (var (day, what) in events.Where(one => one.Day <= november))
        {
            studio.Happens(number, day - 2, what);
        }
    }

    private int Noted(int number)
    {
        studio.Happens(number, 18, new PieceEvent.Due(new DateTimeOffset(2026, 12, 24, 11, 0, 0, TimeSpan.Zero), null, "for a customer"))
            .Happens(number, 19, new PieceEvent.Note(string.Join(' ', Enumerable.Repeat("big cells lower left,", 20))))
            .Happens(number, 20, new PieceEvent.Note("the last of them"));
        return number;
    }

    private static IEnumerable<string> Lines(string words) => Sample.Answer(words)!.Buttons.Select(button => button.Line);
}
