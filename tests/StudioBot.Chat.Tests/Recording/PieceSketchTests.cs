using System.Globalization;
using System.Text.RegularExpressions;
using StudioBot.Chat.Drying;
using StudioBot.Chat.Pictures;
using StudioBot.Chat.Recording;
using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Reminders;

namespace StudioBot.Chat.Tests.Recording;

public sealed class PieceSketchTests : IDisposable
{
    private static readonly byte[] PngSignature = [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A];

    private readonly LiveStudio studio = LiveStudio.Empty();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void A_piece_that_dries_comes_with_its_picture()
    {
        studio.Say("pour 30cm panel bloom 3 colours");
        studio.Now += TimeSpan.FromDays(3);
        var file = studio.Say("piece 1").Reply.File!;
        Assert.Equal(("piece-1.png", "image/png", true), (file.Name, file.MediaType, file.IsPicture));
        Assert.Equal(PngSignature, file.Content.Take(8));
    }

    [Fact]
    public void Its_words_are_the_same_as_without()
    {
        studio.Say("pour 30cm panel bloom 3 colours");
        studio.Now += TimeSpan.FromDays(3);
        Assert.DoesNotContain("png", studio.Hear("piece 1"), StringComparison.Ordinal);
    }

    [Fact]
    public void Weighings_change_the_picture()
    {
        studio.Say("pour 30cm panel bloom 3 colours");
        studio.Now += TimeSpan.FromDays(3);
        var before = studio.Say("piece 1").Reply.File!.Content;
        foreach (var grams in new[] { "700", "680.4", "668.1", "661.0", "656.9" })
        {
            studio.Now += TimeSpan.FromDays(1);
            studio.Say($"weigh 1 {grams} g");
        }

        Assert.NotEqual(before, studio.Say("piece 1").Reply.File!.Content);
    }

    // Noon of the likely day: by the instant, late on the 15th would be drawn at the 16th.
    [Theory]
    [InlineData(0)]
    [InlineData(5)]
    [InlineData(11.5)]
    [InlineData(14.9)]
    public void The_days_that_are_drawn_are_those_that_are_said(double hours)
    {
        studio.Say("pour 30cm panel bloom 3 colours");
        studio.Now += TimeSpan.FromDays(1) + TimeSpan.FromHours(hours);
        var figures = Figures();
        var said = Regex.Match(figures.Title, @"likely (\d+ \w+)").Groups[1].Value;
        Assert.Equal(said, figures.Ready!.LikelyDay);
        Assert.Equal(said, figures.Ready.Likely.ToString("d MMM", CultureInfo.InvariantCulture));
        Assert.InRange(figures.Ready.Likely, figures.Ready.Earliest, figures.Ready.Latest);
    }

    private PieceFigures Figures() => studio.Look(view =>
    {
        var moment = new StudioMoment(new StudioZone(TimeZoneInfo.FindSystemTimeZoneById("Europe/Vienna")), studio.Now);
        var known = new Studio(view, LiveStudio.Practice, isSample: false);
        var reckoning = new PieceReckoning(view, LiveStudio.Practice, studio.Now);
        var standing = new PieceStanding(view.Pieces.Find(1)!, reckoning, moment, known);
        return PieceSketch.Figures(standing, standing.Look!, reckoning, moment);
    });

    [Fact]
    public void A_piece_that_is_dry_brings_none()
    {
        studio.Say("pour 30cm panel bloom 3 colours");
        studio.Now += TimeSpan.FromDays(20);
        studio.Say("dry 1");
        Assert.Null(studio.Say("piece 1").Reply.File);
    }

    [Fact]
    public void What_happened_to_it_is_words_alone()
    {
        studio.Say("pour 30cm panel bloom 3 colours");
        studio.Now += TimeSpan.FromDays(3);
        Assert.Null(studio.Say("piece 1 timeline").Reply.File);
    }
}
