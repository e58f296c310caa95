using StudioBot.Chat.Drying;
using StudioBot.Chat.Pictures;
using StudioBot.Chat.Recording;
using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Reminders;
using StudioBot.Craft.Units;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Tests.Recording;

public sealed class PiecesSketchTests : IDisposable
{
    private static readonly byte[] PngSignature = [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A];

    private readonly SmallStudio studio = new();

    public void Dispose() => studio.Dispose();

    // Its bytes are asked for when the records are closed again, as they are when it is sent.
    [Theory]
    [InlineData("pieces", "pieces.png")]
    [InlineData("pieces drying", "pieces.png")]
    [InlineData("pieces coated", "pieces.png")]
    [InlineData("my pieces", "pieces.png")]
    [InlineData("shelf", "shelf.png")]
    [InlineData("shelf A", "shelf.png")]
    [InlineData("shelf A1", "shelf.png")]
    public void A_list_of_pieces_comes_with_its_picture(string words, string name)
    {
        studio.Pours(shelf: "A1");
        Coated(studio.Pours(shelf: "A2"), 3);
        var file = studio.Answers(words, 3.4).File!;
        Assert.Equal((name, true), (file.Name, file.IsPicture));
        Assert.Equal(PngSignature, file.Content.Take(8));
    }

    [Theory]
    [InlineData("pieces")]
    [InlineData("pieces drying")]
    [InlineData("pieces kept")]
    [InlineData("my pieces")]
    [InlineData("shelf")]
    [InlineData("shelf A1")]
    [InlineData("where is 1?")]
    public void Where_nothing_lies_in_the_studio_there_is_none(string words)
    {
        studio.Happens(studio.Pours(shelf: "A1"), 20, new PieceEvent.Kept());
        Assert.Null(studio.Answers(words, 21).File);
    }

    [Fact]
    public void What_wants_a_hand_comes_first_then_what_dries_then_what_cures()
    {
        var cures = studio.Pours();
        var waits = studio.Pours();
        var failed = studio.Pours();
        studio.Happens(waits, 18, new PieceEvent.Dry());
        Coated(cures, 20);
        Coated(failed, 20);
        studio.Happens(failed, 21, new PieceEvent.Failed("fisheyes"));
        var dries = studio.Pours(day: 20);

        var figures = Figures(23);
        Assert.Equal(("4 pieces in the studio", 0), (figures.Title, figures.More));
        Assert.Equal([waits, failed, dries, cures], figures.Rows.Select(row => row.Number));
        Assert.All(figures.Rows.SelectMany(row => row.Bars), bar => Assert.True(bar.From < bar.To));
        Assert.Equal([PieceSpell.Dried, PieceSpell.Waits], Spells(figures.Rows[0]));
        Assert.Equal([PieceSpell.Dried, PieceSpell.Cures, PieceSpell.Failed], Spells(figures.Rows[1]));
        Assert.Equal([PieceSpell.Dried, PieceSpell.Likely], Spells(figures.Rows[2]));
        Assert.Equal([PieceSpell.Dried, PieceSpell.Cures, PieceSpell.Cures, PieceSpell.Window], Spells(figures.Rows[3]));
    }

    // Surely open from 6 to 12 hours, cured after 7 days (common practice).
    [Fact]
    public void An_open_window_comes_before_all_else()
    {
        studio.Happens(studio.Pours(), 18, new PieceEvent.Dry());
        var open = studio.Pours();
        Coated(open, 20);

        var row = Figures(20.4).Rows[0];
        Assert.Equal(open, row.Number);
        Assert.InRange(row.Bars[^1].To - row.Bars[^1].From, TimeSpan.FromHours(4), TimeSpan.FromHours(12));
        Assert.Equal(TimeSpan.FromDays(7), row.Bars[2].To - row.Bars[1].From);
    }

    [Fact]
    public void What_was_sanded_waits_again_and_what_is_cured_is_done()
    {
        var sanded = studio.Pours();
        Coated(sanded, 18);
        studio.Happens(sanded, 19, new PieceEvent.Sanded());
        var cured = studio.Pours();
        Coated(cured, 12);
        studio.Happens(cured, 19, new PieceEvent.Cured());

        var rows = Figures(20).Rows;
        Assert.Equal([PieceSpell.Dried, PieceSpell.Cures, PieceSpell.Waits], Spells(rows[0]));
        Assert.Equal([PieceSpell.Dried, PieceSpell.Cures], Spells(rows[1]));
    }

    [Fact]
    public void A_book_that_opens_with_pieces_shows_them_since_they_were_poured()
    {
        using var sample = LiveStudio.Sample();
        var row = sample.Look(view =>
        {
            var moment = new StudioMoment(
                new StudioZone(TimeZoneInfo.FindSystemTimeZoneById("Europe/Vienna")), sample.Now);
            var known = new Studio(view, LiveStudio.Practice, isSample: true);
            var reckoning = new PieceReckoning(view, LiveStudio.Practice, moment.Now);
            var standing = new PieceStanding(view.Pieces.Find(17)!, reckoning, moment, known);
            return Assert.Single(new PiecesSketch(reckoning, moment, known).Foremost([standing], "in the studio").Rows);
        });
        Assert.Equal((PieceSpell.Dried, new DateOnly(2026, 11, 21)), (row.Bars[0].Spell, DateOnly.FromDateTime(row.Bars[0].From)));
    }

    [Fact]
    public void Three_hundred_are_as_many_as_can_be_read_and_how_many_more()
    {
        for (var i = 0; i < 300; i++)
        {
            studio.Pours(day: i / 100.0);
        }

        var figures = Figures(4);
        Assert.Equal((PiecesPicture.MostRows, 300 - PiecesPicture.MostRows), (figures.Rows.Count, figures.More));
        Assert.InRange(studio.Answers("pieces", 4).File!.Content.Length, 1000, 200_000);
    }

    [Fact]
    public void A_list_of_several_pages_turns_in_place_and_so_brings_none()
    {
        for (var i = 0; i < 9; i++)
        {
            studio.Pours();
        }

        Assert.Null(studio.Answers("pieces drying", 2).File);
        Assert.NotNull(studio.Answers("pieces", 2).File);
    }

    private void Coated(int piece, double day) => studio.Happens(
        piece, day, new PieceEvent.Coated(new Coat(Volume.FromMillilitres(120), Volume.FromMillilitres(60))));

    private static IEnumerable<PieceSpell> Spells(PieceRow row) => row.Bars.Select(bar => bar.Spell);

    private PiecesFigures Figures(double day)
    {
        PiecesFigures? figures = null;
        studio.Write(day, (session, _) =>
        {
            var moment = new StudioMoment(
                new StudioZone(TimeZoneInfo.FindSystemTimeZoneById("Europe/Vienna")), SmallStudio.Day(day));
            var known = new Studio(session, LiveStudio.Practice, isSample: false);
            var reckoning = new PieceReckoning(session, LiveStudio.Practice, moment.Now);
            figures = new PiecesSketch(reckoning, moment, known).Foremost(
                [.. reckoning.Pieces.Select(piece => new PieceStanding(piece, reckoning, moment, known))], "in the studio");
        });
        return figures!;
    }
}
