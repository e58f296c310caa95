using StudioBot.Host.Rehearsal;

namespace StudioBot.Host.Tests.Rehearsal;

public sealed class TalkReaderTests
{
    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("# a remark")]
    public void Blank_lines_and_remarks_do_nothing(string text) => Assert.Empty(TalkReader.Read([text]));

    [Theory]
    [InlineData("studio empty", false)]
    [InlineData("studio sample", true)]
    [InlineData("sample", true)]
    public void The_studio_is_empty_or_the_invented_one(string text, bool isSample) =>
        Assert.Equal(isSample, Line<TalkLine.Studio>(text).IsSample);

    [Fact]
    public void The_zone_has_its_name() => Assert.Equal("Europe/Vienna", Line<TalkLine.Zone>("zone Europe/Vienna").Name);

    [Theory]
    [InlineData("members pia, jonas", "pia")]
    [InlineData("members Pia, Jonas steward", "jonas")]
    public void Somebody_of_the_members_is_a_steward(string text, string steward)
    {
        var all = Line<TalkLine.Members>(text).All;
        Assert.Equal(["pia", "jonas"], all.Select(member => member.Name));
        Assert.Equal([steward], all.Where(member => member.IsSteward).Select(member => member.Name));
    }

    [Fact]
    public void The_clock_is_set_to_a_moment_of_studio_time() =>
        Assert.Equal(new DateTime(2026, 3, 2, 18, 0, 0), Line<TalkLine.At>("at 2026-03-02 18:00").Local);

    [Theory]
    [InlineData("+ 20 seconds", 20)]
    [InlineData("+ 1 minute", 60)]
    [InlineData("+1.5 hours", 5400)]
    [InlineData("+ 3 days", 259200)]
    [InlineData("+ 2 weeks", 1209600)]
    public void Time_goes_by(string text, int seconds) =>
        Assert.Equal(TimeSpan.FromSeconds(seconds), Line<TalkLine.Later>(text).By);

    [Theory]
    [InlineData("pia: room 20C 58%", false, false, false)]
    [InlineData("pia@group: room 20C 58%", true, false, false)]
    [InlineData("Pia photo: room 20C 58%", false, true, false)]
    [InlineData("pia edits: room 20C 58%", false, false, true)]
    [InlineData("pia@group edits: room 20C 58%", true, false, true)]
    public void Somebody_writes(string text, bool inGroup, bool hasPhoto, bool edits)
    {
        var said = Line<TalkLine.Says>(text);
        Assert.Equal(("pia", "room 20C 58%"), (said.Who, said.Words));
        Assert.Equal((inGroup, hasPhoto, edits), (said.InGroup, said.HasPhoto, said.Edits));
    }

    [Fact]
    public void A_message_may_have_several_lines_and_colons() =>
        Assert.Equal("count white 430 ml\nratio 3:1", Line<TalkLine.Says>("pia: count white 430 ml\\nratio 3:1").Words);

    [Theory]
    [InlineData("pia presses Undo", false)]
    [InlineData("pia@group presses Undo", true)]
    public void Somebody_presses_a_button(string text, bool inGroup)
    {
        var press = Line<TalkLine.Presses>(text);
        Assert.Equal(("pia", "Undo", inGroup), (press.Who, press.Label, press.InGroup));
    }

    [Fact]
    public void What_must_be_said_and_what_must_not()
    {
        Assert.Equal("20 °C", Line<TalkLine.Must>("> 20 °C").Words);
        Assert.Equal("Undo", Line<TalkLine.MustNot>("! Undo").Words);
        Assert.Equal("", Line<TalkLine.MustNot>("!").Words);
    }

    [Fact]
    public void The_service_goes_away_and_comes_back()
    {
        Assert.IsType<TalkLine.Stop>(TalkReader.Read(["stop"])[0]);
        Assert.IsType<TalkLine.Start>(TalkReader.Read(["start"])[0]);
    }

    [Theory]
    [InlineData("crash before commit", (int)CrashPoint.BeforeCommit)]
    [InlineData("crash after commit", (int)CrashPoint.AfterCommit)]
    [InlineData("crash after send", (int)CrashPoint.AfterSend)]
    public void The_service_dies_at_a_point(string text, int point) =>
        Assert.Equal((CrashPoint)point, Line<TalkLine.Crash>(text).Point);

    [Fact]
    public void Lines_keep_their_numbers_whatever_is_passed_over() =>
        Assert.Equal([2, 4], TalkReader.Read(["# remark", "pia: help", "", "> help"]).Select(line => line.Number));

    [Theory]
    [InlineData("dance", "line 2: “dance” says nothing known; try  pia: used 20 ml white")]
    [InlineData("crash sometimes", "line 2: “crash sometimes” says nothing known; try  pia: used 20 ml white")]
    [InlineData("at noon", "line 2: “noon” is no moment; try  at 2026-03-02 18:00")]
    [InlineData("at 2026-02-30 18:00", "line 2: “2026-02-30 18:00” is no moment; try  at 2026-03-02 18:00")]
    [InlineData("+ a while", "line 2: “a while” is no time; try  + 3 days")]
    [InlineData("members ,", "line 2: nobody is named; try  members pia steward, jonas")]
    public void A_line_that_can_t_be_read_is_named_with_what_would_work(string text, string why) =>
        Assert.Equal(why, Assert.Throws<TalkException>(() => TalkReader.Read(["# remark", text])).Message);

    private static T Line<T>(string text)
        where T : TalkLine => Assert.IsType<T>(Assert.Single(TalkReader.Read([text])));
}
