using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Learning;

/// <summary>What is said of the studio's own drying. The usual piece, 2.5 mm in a room nobody read, takes 10.7 days by common practice.</summary>
public sealed class OwnDryingTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Empty();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void Before_a_piece_has_dried_common_practice_is_named_and_what_to_say()
    {
        var said = Words("studio drying");

        Assert.StartsWith("No piece has dried here yet", said, StringComparison.Ordinal);
        Assert.Contains("8 days for 2.5 mm", said, StringComparison.Ordinal);
        Assert.Contains("notyet 17", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Slow_pieces_make_the_next_ready_day_later_and_the_quote_s_with_it()
    {
        var before = Words("quote 30cm panel bloom");
        Dried(12, "white", notYet: 19, dry: 22);
        var said = Words("studio drying");

        Assert.Matches(@"^Pieces take 1\.[4-9]\d* of the usual time", said);
        Assert.Contains("12 pieces that dried.", said, StringComparison.Ordinal);
        Assert.DoesNotContain("The last", said, StringComparison.Ordinal);
        Assert.DoesNotContain("own pieces", before, StringComparison.Ordinal);
        Assert.Contains("12 own pieces", Words("quote 30cm panel bloom"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_new_paint_that_slows_the_pieces_down_is_named_with_its_day()
    {
        Dried(16, "white", notYet: 9, dry: 12);
        var day = studio.Now;
        Dried(12, "white, lamp black", notYet: 22, dry: 26);
        var said = Words("studio drying");

        Assert.Matches($@"The last 12 that dried, poured from {day.Day} [A-Z][a-z]+ on, took (1\.[5-9]|2)\d* times as long as those before", said);
        Assert.Contains("all of them, and none before: with lamp black", said, StringComparison.Ordinal);

        studio.Tells("pour 30cm panel bloom white");
        Assert.Contains(
            "The last 12 pieces dried slower than those before.",
            Words($"piece {studio.Look(view => view.Pieces.Numbers()[^1])}"),
            StringComparison.Ordinal);
    }

    private void Dried(int pieces, string paints, int notYet, int dry)
    {
        var first = studio.Look(view => view.Pieces.Numbers().Count == 0 ? 1 : view.Pieces.Numbers()[^1] + 1);
        foreach (var _ in Enumerable.Range(first, pieces))
        {
            studio.Tells($"pour 30cm panel bloom {paints}");
            studio.Now += TimeSpan.FromMinutes(3);
        }

        var poured = studio.Now;
        All(first, pieces, "notyet", poured.AddDays(notYet));
        All(first, pieces, "dry", poured.AddDays(dry));
    }

    private void All(int first, int pieces, string word, DateTimeOffset at)
    {
        studio.Now = at;
        for (var number = first; number < first + pieces; number++)
        {
            studio.Tells($"{word} {number}");
            studio.Now += TimeSpan.FromMinutes(3);
        }
    }

    private string Words(string said)
    {
        studio.Now += TimeSpan.FromMinutes(3);
        return string.Join(' ', studio.Hear(said).Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
    }
}
