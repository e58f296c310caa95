using System.Diagnostics;
using StudioBot.Chat.Pictures;

namespace StudioBot.Chat.Tests.Pictures;

public sealed class CupsPictureTests
{
    private static readonly Cup Base = new(CupKind.Base, "base coat", "100 ml", 1);
    private static readonly Cup Activator = new(CupKind.Activator, "activator", "9 ml", 0.09);

    private static readonly CupsFigures Usual = Of(Base, Colour("colour 1"), Colour("colour 2"), Colour("colour 3"), Activator);

    /// <summary>What the picture of cups may have to show.</summary>
    public static TheoryData<string> Cases => [.. Figures.Keys];

    private static Dictionary<string, CupsFigures> Figures => new()
    {
        ["one"] = Of(Colour("colour 1") with { Share = 1 }),
        ["usual"] = Usual,
        ["six"] = Of(Base, Colour("white"), Colour("lamp black"), Colour("gold mica"), Colour("burnt umber"), Activator),
        ["as many as fit"] = Of([Base, .. Enumerable.Range(1, 9).Select(at => Colour($"colour {at}")), Activator]),
        ["seven"] = Of([Base, .. Enumerable.Range(1, 6).Select(at => Colour($"colour {at}"))]),
        ["grouped"] = Of(Base, Colour("colours") with { Amount = "40 × 1250 ml", Count = 40 }, Activator),
        ["grouped, all named"] = Of(Base, Colour("colours") with { Amount = "40 × 15 ml", Count = 40 }, Activator) with
        {
            Names = [.. Enumerable.Range(1, 40).Select(at => $"titanium white no. {at}")],
        },
        ["grouped, ten named"] = Of(Base, Colour("colours") with { Amount = "10 × 15 ml", Count = 10 }, Activator) with
        {
            Names = [.. Enumerable.Range(1, 10).Select(at => $"white {at}")],
        },
        ["long words"] = Of(Colour(Long("white ")), Colour(Long("black ")), Colour("gold")) with
        {
            Title = Long("panel "),
            Line = Long("in all "),
            Names = [Long("name"), Long("other"), "gold", "umber", Long("last")],
        },
        ["strange words"] = Of(Colour("\U0001F3A8\0"), Colour("שלום")) with { Title = "\U0001F3A8\n\tpanel" },
        ["a drop beside a bucket"] = Of(Base with { Amount = "123455 ml" }, Activator with { Amount = "1 ml", Share = 1e-6 }),
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void All_its_words_can_be_read(string named)
    {
        using var sheet = CupsPicture.Drawn(Figures[named]);
        Legible.Check(sheet);
    }

    [Fact]
    public void It_says_what_to_measure_into_each_cup_and_how_high_that_stands()
    {
        using var sheet = CupsPicture.Drawn(Usual);
        Assert.Superset(
            new HashSet<string> { "1 panel 30 × 30 cm: bloom", "base coat", "100 ml", "100 %", "colour 2", "40 ml", "40 %", "9 %" },
            sheet.Texts.Select(text => text.Words).ToHashSet());
    }

    // Read at arm's length: half as large again as what is read off a phone in the hand.
    [Fact]
    public void What_is_measured_is_as_large_as_there_is_room()
    {
        using var sheet = CupsPicture.Drawn(Usual);
        Assert.All(
            sheet.Texts.Where(text => text.Words.EndsWith(" ml", StringComparison.Ordinal)),
            text => Assert.True(text.Lettering.Size >= 1.5 * Lettering.Smallest, text.Words));
    }

    [Fact]
    public void Names_that_have_no_room_are_counted()
    {
        using var sheet = CupsPicture.Drawn(Figures["grouped, all named"]);
        Assert.Matches(@" and \d+ more$", sheet.Texts[^1].Words);
    }

    [Fact]
    public void The_same_figures_give_the_same_bytes() => Assert.Equal(CupsPicture.Png(Usual), CupsPicture.Png(Usual));

    [Fact]
    public void It_is_drawn_within_a_second()
    {
        var watch = Stopwatch.StartNew();
        CupsPicture.Png(Figures["as many as fit"]);
        Assert.InRange(watch.Elapsed, TimeSpan.Zero, TimeSpan.FromSeconds(1));
    }

    private static Cup Colour(string name) => new(CupKind.Colour, name, "40 ml", 0.4);

    private static CupsFigures Of(params Cup[] cups) =>
        new("1 panel 30 × 30 cm: bloom", "255 ml in all, with 3 ml that stay in each cup.", cups, []);

    private static string Long(string words) => string.Concat(Enumerable.Repeat(words, 60));
}
