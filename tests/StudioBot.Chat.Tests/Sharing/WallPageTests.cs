using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Sharing;

public sealed class WallPageTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Empty();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void An_idle_studio_says_so() => Assert.Contains(
        "Nothing dries, nothing waits, nothing runs low.", Page().PlainText, StringComparison.Ordinal);

    [Fact]
    public void It_tells_what_dries_what_is_ready_what_is_coated_and_what_is_low()
    {
        studio.Tells("bought 100 ml white 3.00");
        studio.Tells("material white low 200 ml");
        Pour(3);
        studio.Tells("dry 2 3");
        Assert.True(studio.Say("coat 3 100 ml 2:1", agreed: true).Recorded);

        var page = Page().PlainText;

        Assert.Matches("(?m)^Drying, 1: 1 .+\\.$", page);
        Assert.Contains("Ready for resin, 1: 2.", page, StringComparison.Ordinal);
        Assert.Matches("(?m)^Coated, 1: 3 .+\\.$", page);
        Assert.Matches("(?m)^Low, 1: white .+ ml\\.$", page);
    }

    [Fact]
    public void A_hundred_pieces_still_fit_a_phone_and_none_is_left_uncounted()
    {
        Pour(100);

        var page = Page();

        Assert.InRange(LineBudget.Of(page), 2, LineBudget.Lines - 1);
        Assert.Contains("Drying, 100: ", page.PlainText, StringComparison.Ordinal);
        Assert.Matches("and 9[0-9] more", page.PlainText);
    }

    [Fact]
    public void Nobody_s_name_and_no_sum_stands_on_it()
    {
        studio.Tells("bought 100 ml white 3.00");
        studio.Tells("pour 20cm panel bloom 3 colours", "Pia");

        var page = Page().PlainText;

        Assert.DoesNotContain("Mira", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Pia", page, StringComparison.Ordinal);
        Assert.DoesNotContain("3.00", page, StringComparison.Ordinal);
    }

    private void Pour(int pieces)
    {
        for (var piece = 0; piece < pieces; piece++)
        {
            studio.Now += TimeSpan.FromMinutes(2);
            studio.Tells("pour 20cm panel bloom 3 colours");
        }
    }

    private Reply Page() => studio.Look(view => WallPage.Of(new Studio(view, Sample.Practice, isSample: false), studio.Now));
}
