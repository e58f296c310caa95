using System.Diagnostics;
using StudioBot.Chat.Pictures;
using StudioBot.Craft.Units;

namespace StudioBot.Chat.Tests.Pictures;

public sealed class PiecePictureTests
{
    private static readonly DateTime Poured = new(2026, 11, 16, 18, 30, 0, DateTimeKind.Unspecified);

    // Ten days of weighings of a panel that goes from 720 g to 600 g.
    private static readonly PieceFigures Weighed = new(
        "17: ready 30 Nov–9 Dec, likely 3 Dec",
        ["1 panel 30 × 30 cm: bloom", "From 7 weighings."],
        Poured,
        Poured.AddDays(10))
    {
        Ready = new ReadySpan(Poured.AddDays(13.5), Poured.AddDays(16.5), Poured.AddDays(22.5), "3 Dec"),
        Weighings = [.. new[] { 0.1, 1, 2, 3, 5, 7, 9 }.Select(day => (Poured.AddDays(day), At(day)))],
        Curve = [.. Enumerable.Range(2, 40).Select(day => new CurvePoint(Poured.AddDays(day), At(day), At(day + 0.5), At(day - 0.5)))],
        DryMass = Mass.FromGrams(602.4),
    };

    private static readonly PieceFigures Odds = Weighed with
    {
        Weighings = [],
        Curve = [],
        DryMass = null,
        Odds = [.. Enumerable.Range(0, 60).Select(day => (Poured.AddDays(day), Math.Min(1, day / 40.0)))],
    };

    /// <summary>What a piece's picture may have to show.</summary>
    public static TheoryData<string> Cases => [.. Figures.Keys];

    private static Dictionary<string, PieceFigures> Figures => new()
    {
        ["weighed"] = Weighed,
        ["odds"] = Odds,
        ["weighed, no curve, no day"] = Weighed with { Curve = [], DryMass = null, Ready = null },
        ["long words"] = Weighed with { Title = Long("title "), Lines = [Long("line"), Long("Grounds and more ")] },
        ["strange words"] = Weighed with { Title = "17: \U0001F3A8\n\t\0שלום", Lines = [] },
        ["poured just now"] = Odds with { Now = Poured.AddMinutes(1) },
        ["ready at once"] = Weighed with { Ready = new ReadySpan(Weighed.Now, Weighed.Now, Weighed.Now, "26 Nov") },
        ["ready far off"] = Weighed with
        {
            Ready = new ReadySpan(Poured.AddDays(60), Poured.AddDays(65), Poured.AddDays(70), "20 Jan"),
        },
        ["a year on a shelf"] = Weighed with { Now = Poured.AddDays(365), Ready = null },
        ["a heavy one"] = Weighed with
        {
            Weighings = [(Poured, Mass.FromGrams(25_431.5)), (Poured.AddDays(1), Mass.FromGrams(25_431.1))],
            Curve = [],
            DryMass = null,
        },
        ["weighed twice the same"] = Weighed with
        {
            Weighings = [(Poured, Mass.FromGrams(10)), (Poured.AddDays(1), Mass.FromGrams(10))],
            Curve = [],
            DryMass = null,
        },
        ["weighed three hundred times"] = Weighed with
        {
            Weighings = [.. Enumerable.Range(0, 300).Select(hour => (Poured.AddHours(hour), At(hour / 24.0)))],
        },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void All_its_words_can_be_read(string named)
    {
        using var sheet = PiecePicture.Drawn(Figures[named]);
        Legible.Check(sheet);
    }

    [Fact]
    public void It_says_the_answer_the_likely_day_and_the_ready_line()
    {
        using var sheet = PiecePicture.Drawn(Weighed);
        Assert.Superset(
            new HashSet<string> { Weighed.Title, "likely 3 Dec", "now", "ready line, 602.4 g", "weighed", "650 g" },
            sheet.Texts.Select(text => text.Words).ToHashSet());
    }

    [Fact]
    public void The_same_figures_give_the_same_bytes() => Assert.Equal(PiecePicture.Png(Weighed), PiecePicture.Png(Weighed));

    [Fact]
    public void Another_weighing_gives_other_bytes() => Assert.NotEqual(
        PiecePicture.Png(Weighed), PiecePicture.Png(Weighed with { Weighings = [.. Weighed.Weighings.Skip(1)] }));

    [Fact]
    public void It_is_drawn_within_a_second()
    {
        var watch = Stopwatch.StartNew();
        PiecePicture.Png(Weighed);
        Assert.InRange(watch.Elapsed, TimeSpan.Zero, TimeSpan.FromSeconds(1));
    }

    private static Mass At(double days) => Mass.FromGrams(600 + 120 * Math.Exp(-days / 4));

    private static string Long(string words) => string.Concat(Enumerable.Repeat(words, 60));
}
