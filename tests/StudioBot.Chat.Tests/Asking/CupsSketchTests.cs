using StudioBot.Chat.Asking;
using StudioBot.Chat.Pictures;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Tests.Support;
using StudioBot.Craft.Pours;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;

namespace StudioBot.Chat.Tests.Asking;

public sealed class CupsSketchTests
{
    [Fact]
    public void Amounts_come_with_their_cups_and_what_is_asked_further_does_not()
    {
        var file = Sample.Answer("amounts 30cm panel bloom 6 colours")!.File!;
        Assert.Equal(("cups.png", true), (file.Name, file.IsPicture));
        Assert.InRange(file.Content.Length, 1000, 200_000);
        Assert.Null(Sample.Answer("amounts 30cm panel bloom 6 colours mixes")!.File);
        Assert.Null(Sample.Answer("amounts 30cm panel bloom 6 colours grounds")!.File);
    }

    // The same figures as the words: every cup's amount stands in the rows of the answer.
    [Theory]
    [InlineData("bloom", 1)]
    [InlineData("bloom", 9)]
    [InlineData("swipe", 4)]
    public void Each_colour_has_its_cup_and_all_are_to_one_scale(string technique, int colours)
    {
        var figures = Figures(technique, new Colours(colours, ["white"]));
        var words = Sample.Answer($"amounts 30cm panel {technique} {colours} colours")!.PlainText;
        Assert.Equal(colours, figures.Cups.Count(cup => cup.Kind == CupKind.Colour));
        Assert.Equal("white", figures.Cups.First(cup => cup.Kind == CupKind.Colour).Name);
        Assert.All(figures.Cups, cup => Assert.Contains(cup.Amount, words, StringComparison.Ordinal));
        Assert.Equal(1, figures.Cups.Max(cup => cup.Share));
        Assert.Contains("1 panel 30 × 30 cm: " + technique, figures.Title, StringComparison.Ordinal);
    }

    [Fact]
    public void Colours_without_a_name_are_counted() => Assert.Equal(
        ["white", "colour 2", "colour 3"],
        Figures("bloom", new Colours(3, ["white"])).Cups.Where(cup => cup.Kind == CupKind.Colour).Select(cup => cup.Name));

    [Fact]
    public void More_than_nine_are_one_cup_and_how_many_of_it()
    {
        var figures = Figures("bloom", new Colours(12, ["white", "black"]));
        var cup = Assert.Single(figures.Cups, cup => cup.Kind == CupKind.Colour);
        Assert.Matches(@"^12 × \d+ ml$", cup.Amount);
        Assert.Equal((12, "white"), (cup.Count, figures.Names[0]));
    }

    private static CupsFigures Figures(string technique, Colours colours)
    {
        var surfaces = new SurfaceSet(new Surface.Panel(Length.FromCentimetres(30), Length.FromCentimetres(30)));
        var amounts = PourAmounts.For(
            Sample.Studio.Technique(technique), surfaces, colours.Count, Sample.Practice.Pours.SideFilm.Value);
        return CupsSketch.Figures(amounts, colours, surfaces, 255);
    }
}
