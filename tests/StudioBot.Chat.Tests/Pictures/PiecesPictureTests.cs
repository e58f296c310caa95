using System.Diagnostics;
using StudioBot.Chat.Pictures;

namespace StudioBot.Chat.Tests.Pictures;

public sealed class PiecesPictureTests
{
    private static readonly DateTime Now = new(2026, 11, 25, 10, 0, 0, DateTimeKind.Unspecified);

    private static readonly PieceRow Dries = new(17, "B3", "30cm panel", "28 Nov–9 Dec",
        [new(PieceSpell.Dried, Day(-4), Now), new(PieceSpell.Likely, Day(2.6), Day(14.6))]);

    private static readonly PieceRow Waits = new(14, "B1", "30cm panel", "dry 20 Nov",
        [new(PieceSpell.Dried, Day(-12), Day(-5)), new(PieceSpell.Waits, Day(-5), Now)]);

    private static readonly PieceRow Cures = new(13, "C3", "40cm panel", "cures to 1 Dec",
    [
        new(PieceSpell.Dried, Day(-13), Day(-3)), new(PieceSpell.Waits, Day(-3), Day(-1)), new(PieceSpell.Cures, Day(-1), Now),
        new(PieceSpell.Cures, Now, Day(6)), new(PieceSpell.Window, Day(-0.8), Day(-0.1)),
    ]);

    private static readonly PieceRow Failed = new(12, "", "21x29.7cm panel", "coat failed",
        [new(PieceSpell.Unnoted, Day(-16), Day(-2)), new(PieceSpell.Failed, Day(-2), Now)]);

    private static readonly PiecesFigures Four = Of(Waits, Failed, Dries, Cures);

    /// <summary>What a picture of pieces may have to show.</summary>
    public static TheoryData<string> Cases => [.. Figures.Keys];

    private static Dictionary<string, PiecesFigures> Figures => new()
    {
        ["one"] = Of(Dries) with { Title = "1 piece in the studio", Line = "" },
        ["four"] = Four,
        ["a page of eight"] = Of([Waits, Waits, Dries, Dries, Dries, Cures, Failed, Dries]) with { Line = "" },
        ["as many as fit, and more"] = Of([.. Enumerable.Range(0, 14).Select(at => new[] { Dries, Waits, Cures, Failed }[at % 4])]) with
        {
            Title = "300 pieces in the studio",
            More = 286,
        },
        ["long words"] = Of(Waits with { Shelf = Long("north wall "), Standing = Long("waits ") }, Dries) with
        {
            Title = Long("title "),
            Line = Long("order "),
        },
        ["strange words"] = Of(Dries with { Shelf = "\U0001F3A8\0ש", Size = "שלום" }) with { Title = "\U0001F3A8\n\tpieces" },
        ["a year on a shelf"] = Of(
            Dries,
            new(1, "A1", "20cm panel", "cured 3 Jan", [new(PieceSpell.Dried, Day(-365), Day(-330))]),
            Waits with { Bars = [new(PieceSpell.Dried, Day(-365), Day(-340)), new(PieceSpell.Waits, Day(-340), Now)] }),
        ["ready far off"] = Of(Dries with { Bars = [Dries.Bars[0], new(PieceSpell.Likely, Day(70), Day(300))] }),
        ["poured just now"] = Of(Dries with { Bars = [new(PieceSpell.Dried, Now.AddSeconds(-1), Now)] }),
        ["a window in an hour"] = Of(
            Cures with { Bars = [new(PieceSpell.Cures, Now, Day(7)), new(PieceSpell.Window, Day(0.04), Day(0.08))] }, Waits),
        ["nothing known of it"] = Of(Dries with { Bars = [], Standing = "no day" }),
        ["the year turns"] = Four with { Now = new DateTime(2026, 12, 31, 23, 59, 0, DateTimeKind.Unspecified) },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void All_its_words_can_be_read(string named)
    {
        using var sheet = PiecesPicture.Drawn(Figures[named]);
        Legible.Check(sheet);
    }

    [Fact]
    public void It_names_the_pieces_says_how_far_they_are_and_what_its_bars_mean()
    {
        using var sheet = PiecesPicture.Drawn(Four with { More = 16 });
        Assert.Superset(
            new HashSet<string>
            {
                "now", "17 B3 30cm panel", "28 Nov–9 Dec", "coat failed", "and 16 more", "25 Nov", "drying so far",
                "to be dry, 8 times in 10", "dry, waits for a coat", "coat cures", "recoat window", "days not noted",
            },
            Words(sheet));
    }

    [Fact]
    public void Only_what_is_in_it_is_explained()
    {
        using var sheet = PiecesPicture.Drawn(Of(Dries));
        Assert.DoesNotContain("recoat window", Words(sheet));
        Assert.DoesNotContain("goes on further", Words(sheet));
    }

    [Fact]
    public void What_goes_on_beyond_its_days_is_marked()
    {
        using var sheet = PiecesPicture.Drawn(Figures["a year on a shelf"]);
        Assert.Contains("goes on further", Words(sheet));
    }

    [Fact]
    public void The_same_figures_give_the_same_bytes() => Assert.Equal(PiecesPicture.Png(Four), PiecesPicture.Png(Four));

    [Fact]
    public void It_is_drawn_within_a_second()
    {
        var watch = Stopwatch.StartNew();
        PiecesPicture.Png(Figures["as many as fit, and more"]);
        Assert.InRange(watch.Elapsed, TimeSpan.Zero, TimeSpan.FromSeconds(1));
    }

    [Fact]
    public void More_rows_than_can_be_read_are_no_picture() => Assert.Throws<ArgumentOutOfRangeException>(
        () => PiecesPicture.Drawn(Of([.. Enumerable.Repeat(Dries, PiecesPicture.MostRows + 1)])));

    private static HashSet<string> Words(Sheet sheet) => [.. sheet.Texts.Select(text => text.Words)];

    private static PiecesFigures Of(params PieceRow[] rows) =>
        new($"{rows.Length} pieces in the studio", "What wants a hand comes first.", Now, rows, 0);

    private static DateTime Day(double days) => Now.AddDays(days);

    private static string Long(string words) => string.Concat(Enumerable.Repeat(words, 60));
}
