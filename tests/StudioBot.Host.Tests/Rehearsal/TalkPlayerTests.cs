using StudioBot.Host.Rehearsal;
using StudioBot.Host.Tests.Support;

namespace StudioBot.Host.Tests.Rehearsal;

public sealed class TalkPlayerTests
{
    [Fact]
    public void Expectations_look_at_what_came_since_the_last_event()
    {
        var (failures, _) = Played("pia: room 20C 58%", "> 20 °C", "pia: room 21C 50%", "> 21 °C", "! 20 °C");
        Assert.Equal(0, failures);
    }

    [Theory]
    [InlineData("> 30 °C", "line 2: expected “30 °C”. The bot sent:")]
    [InlineData("! 20 °C", "line 2: expected no “20 °C”. The bot sent:")]
    [InlineData("!", "line 2: expected silence. The bot sent:")]
    [InlineData("pia presses Dance", "line 2: pia sees no button that begins with “Dance”. The bot sent:")]
    public void What_fails_is_named_by_its_line(string second, string why)
    {
        var (failures, trouble) = Played("pia: room 20C 58%", second);
        Assert.Equal(1, failures);
        Assert.StartsWith(why, trouble, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_bot_sent_instead_is_shown() =>
        Assert.Contains("pia: Studio: 20 °C, 58 %.", Played("pia: room 20C 58%", "> 30 °C").Trouble, StringComparison.Ordinal);

    [Theory]
    [InlineData(new[] { "zone Atlantis/Deep", "pia: help" }, "line 1: “Atlantis/Deep” is no zone; try  zone Europe/Vienna")]
    [InlineData(new[] { "pia: help", "studio sample" }, "line 2: stands at the top, before anything happens")]
    [InlineData(new[] { "pia: help", "zone UTC" }, "line 2: stands at the top, before anything happens")]
    [InlineData(new[] { "pia: help", "members jonas" }, "line 2: stands at the top, before anything happens")]
    [InlineData(new[] { "at 2026-03-02 18:00", "at 2026-03-02 17:00" }, "line 2: the clock only goes forwards")]
    [InlineData(new[] { "pia edits: help" }, "line 1: pia has written nothing yet that could be corrected")]
    public void What_can_t_be_played_is_named(string[] lines, string why) =>
        Assert.Equal(why, Assert.Throws<TalkException>(() => Played(lines)).Message);

    [Theory]
    [InlineData("crash before commit")]
    [InlineData("crash after commit")]
    [InlineData("crash after send")]
    public void A_crash_neither_loses_a_record_nor_books_it_twice(string crash)
    {
        var (failures, trouble) = Played(
            crash, "pia: room 20C 58%", "> 20 °C", "pia: undo", "> Taken back", "pia: undo", "> no record to take back");
        Assert.True(failures == 0, trouble);
    }

    [Fact]
    public void After_a_crash_behind_the_send_the_second_message_says_that_it_may_be_one()
    {
        var (failures, trouble) = Played("crash after send", "pia: room 20C 58%", "> You may have this twice");
        Assert.True(failures == 0, trouble);
    }

    private static (int Failures, string Trouble) Played(params string[] lines)
    {
        using var heard = new StringWriter();
        using var trouble = new StringWriter { NewLine = "\n" };
        using var player = new TalkPlayer(Studios.Practice, new TalkPage(heard, trouble, asJson: false, files: null));
        player.Play(TalkReader.Read(lines));
        return (player.Failures, trouble.ToString());
    }
}
