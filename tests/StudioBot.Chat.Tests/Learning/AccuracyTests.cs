using StudioBot.Chat.Learning;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Learning;

/// <summary>Orders and coats against what was told of them before; a week for an order, 3 to 6 h at 21 °C until a coat opens (common practice), of which
/// the geometric middle is 4.243 h.</summary>
public sealed class AccuracyTests : IDisposable
{
    private readonly LiveStudio studio = LiveStudio.Empty();

    public void Dispose() => studio.Dispose();

    [Fact]
    public void Orders_are_held_against_what_was_told_once_two_had_come()
    {
        studio.Tells("material new saffron 250 ml 6.90");
        Ordered(7, 12);

        // (2·7 + 12·n)/(2 + n) after 2 to 6 of them is 2.5, 2, 1.67, 1.43 and 1.25 days short of 12; a week is 5 short.
        var said = studio.Hear("studio accuracy");
        Assert.StartsWith("Your own delivery times beat common practice", said, StringComparison.Ordinal);
        Assert.Contains("Orders, 5 orders: off by 1.7 days; what is set by 5 days.", said, StringComparison.Ordinal);
        Assert.Contains(
            Backtested(),
            line => line.StartsWith("orders: 5, off by 1.67 days in the middle, common practice by 5 days;", StringComparison.Ordinal));
        Assert.Equal(5, Backtested().Count(line => line.Contains(" saffron, orders: told ", StringComparison.Ordinal)));
    }

    [Fact]
    public void Coats_are_held_against_the_hours_that_were_told_of_them()
    {
        Tacky(8, 2.5);

        // Three that are told by the sheet, as it opens earlier from three reports on, and five by the own ones. 2.5 h at 20 °C are 2.32 h at
        // 21 °C (0.926 times as fast by 55 kJ/mol), 1.93 h before the sheet's middle; before the sheet's earliest hour nothing is told to open.
        var said = studio.Hear("studio accuracy");
        Assert.StartsWith("Your own resin hours beat common practice", said, StringComparison.Ordinal);
        Assert.Matches(@"Resin opens, 8 coats: off by (0|1)(\.\d+)? h; the sheet by 1\.9 h\. 0 % came", said);
        Assert.Contains(Backtested(), line => line.StartsWith("resin opens: 8, off by ", StringComparison.Ordinal));
    }

    [Fact]
    public void A_coat_is_not_foretold_by_what_was_noted_after_it_was_laid()
    {
        studio.Tells("pour 30cm panel bloom 6 colours");
        studio.Tells("pour 30cm panel swipe 6 colours");
        for (var pair = 0; pair < 3; pair++)
        {
            Assert.True(studio.Say("coat 1 180 ml 2:1 20C 50%", agreed: true).Recorded);
            studio.Now += TimeSpan.FromMinutes(10);
            Assert.True(studio.Say("coat 2 180 ml 2:1 20C 50%", agreed: true).Recorded);
            studio.Now += TimeSpan.FromHours(4);
            studio.Tells("1 tacky");
            studio.Now += TimeSpan.FromMinutes(10);
            studio.Tells("2 tacky");
            studio.Now += TimeSpan.FromHours(20);
        }

        // Two of a pair knew the same: what both were told is alike.
        var told = Backtested().Where(line => line.Contains(", resin opens: told ", StringComparison.Ordinal))
            .Select(line => line[line.IndexOf("told ", StringComparison.Ordinal)..line.IndexOf(", common", StringComparison.Ordinal)]).ToList();
        Assert.Equal(6, told.Count);
        Assert.Equal([told[0], told[2], told[4]], [told[1], told[3], told[5]]);
    }

    [Fact]
    public void Three_kinds_and_more_fit_a_screen()
    {
        studio.Tells("material new saffron 250 ml 6.90");
        Ordered(7, 12);
        Tacky(5, 4);
        for (var pour = 0; pour < 6; pour++)
        {
            studio.Now += TimeSpan.FromMinutes(2);
            studio.Tells("pour 30cm panel bloom 6 colours 237 ml left 12");
        }

        var reply = studio.Say("studio accuracy").Reply;
        Assert.True(LineBudget.Of(reply) <= LineBudget.Lines, reply.PlainText);
        Assert.Contains("Paint, 6: off by", reply.PlainText, StringComparison.Ordinal);
        Assert.Contains("Orders, 5: off by", reply.PlainText, StringComparison.Ordinal);
        Assert.Contains("Resin opens, 5: off by", reply.PlainText, StringComparison.Ordinal);
    }

    private void Ordered(int times, double days)
    {
        for (var order = 0; order < times; order++)
        {
            studio.Tells("ordered saffron");
            studio.Now += TimeSpan.FromDays(days);
            studio.Tells("bought 250 ml saffron 6.90");
            studio.Now += TimeSpan.FromDays(1);
        }
    }

    private void Tacky(int times, double hours)
    {
        studio.Tells("pour 30cm panel bloom 6 colours");
        for (var coat = 0; coat < times; coat++)
        {
            Assert.True(studio.Say("coat 1 180 ml 2:1 20C 50%", agreed: true).Recorded);
            studio.Now += TimeSpan.FromHours(hours);
            studio.Tells("1 tacky");
            studio.Now += TimeSpan.FromHours(20);
        }
    }

    private IReadOnlyList<string> Backtested() => studio.Look(view => Backtest.Of(new Studio(view, Sample.Practice, isSample: false), studio.Now));
}
