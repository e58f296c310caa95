using System.Diagnostics;
using StudioBot.Chat.Pictures;

namespace StudioBot.Chat.Tests.Pictures;

public sealed class WeekPictureTests
{
    private static readonly WeekRow White = new("white", "75 ml", "925 ml", 12.3, "");
    private static readonly WeekRow Black = new("lamp black", "120 ml", "60 ml", 0.5, "low");
    private static readonly WeekRow Gold = new("gold mica", "1.5 g", "4.2 g", 2.8, "");
    private static readonly WeekRow Cups = new("cup", "40 pieces", "12 pieces", 0.3, "low, ordered");
    private static readonly WeekRow Out = new("activator", "30 ml", "", 0, "low");
    private static readonly WeekRow Unused = new("hardener B", "", "90 ml", null, "low");

    private static readonly WeekFigures Six = Of(Out, Black, Cups, Unused, White, Gold);

    /// <summary>What the picture of a week may have to show.</summary>
    public static TheoryData<string> Cases => [.. Figures.Keys];

    private static Dictionary<string, WeekFigures> Figures => new()
    {
        ["one"] = Of(White),
        ["one, of which nothing is left"] = Of(Out),
        ["six"] = Six,
        ["as many as fit, and more"] = Of(Out, Black, Cups, Unused, White, Gold, White, Gold, White, Gold) with { More = 23 },
        ["long words"] = Of(
            White with { Name = Long("titanium white "), Used = Long("75 ml"), Left = Long("9 l") },
            Cups with { Name = Long("small cup ") }) with
        {
            Title = Long("The week "),
        },
        ["strange words"] = Of(White with { Name = "\U0001F3A8\0שלום" }) with { Title = "Week\n\t48" },
        ["figures of a factory"] = Of(White with { Used = "123456789 ml", Left = "2147483647 ml", Weeks = 1e12 }),
        ["at the edge of the axis"] = Of(White with { Weeks = 8 }, White with { Weeks = 8.0001 }, Black with { Weeks = 1e-9 }),
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void All_its_words_can_be_read(string named)
    {
        using var sheet = WeekPicture.Drawn(Figures[named]);
        Legible.Check(sheet);
    }

    // 925 ml at 75 ml a week are 12.3 weeks; half a week are three days and a half.
    [Fact]
    public void It_says_what_was_used_what_is_left_and_how_long_that_lasts_each_in_its_own_unit()
    {
        using var sheet = WeekPicture.Drawn(Six with { More = 7 });
        Assert.Superset(
            new HashSet<string>
            {
                "white", "75 ml used, 925 ml left", "12 weeks", "lamp black: low", "3 days", "cup: low, ordered",
                "40 pieces used, 12 pieces left", "30 ml used, none left", "none used, 90 ml left", "and 7 more", "more than 8 weeks",
            },
            sheet.Texts.Select(text => text.Words).ToHashSet());
    }

    [Fact]
    public void A_long_name_never_hides_that_it_is_low()
    {
        using var sheet = WeekPicture.Drawn(Of(Cups with { Name = Long("small cup ") }));
        Assert.Contains(sheet.Texts, text => text.Words.EndsWith("…: low, ordered", StringComparison.Ordinal));
    }

    [Fact]
    public void The_same_figures_give_the_same_bytes() => Assert.Equal(WeekPicture.Png(Six), WeekPicture.Png(Six));

    [Fact]
    public void It_is_drawn_within_a_second()
    {
        var watch = Stopwatch.StartNew();
        WeekPicture.Png(Figures["as many as fit, and more"]);
        Assert.InRange(watch.Elapsed, TimeSpan.Zero, TimeSpan.FromSeconds(1));
    }

    private static WeekFigures Of(params WeekRow[] rows) => new("Week 48, 23 Nov to 29 Nov so far", rows, 0);

    private static string Long(string words) => string.Concat(Enumerable.Repeat(words, 60));
}
