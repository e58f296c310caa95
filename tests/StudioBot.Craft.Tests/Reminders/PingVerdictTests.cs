using StudioBot.Craft.Reminders;
using static StudioBot.Craft.Reminders.PingKind;

namespace StudioBot.Craft.Tests.Reminders;

/// <summary>Rows of (planned, now, state) and the verdict; quiet from 22:00 to 8:00.</summary>
public sealed class PingVerdictTests
{
    private static readonly CivilRule Sunday = new(new TimeOnly(9, 0), DayOfWeek.Sunday);

    public static TheoryData<PingKind, string, string, PingVerdict> AsPlanned => new()
    {
        // On time, late, too late.
        { Ready, "5 10:00", "5 10:00", new PingVerdict.Send() },
        { Ready, "5 10:00", "5 10:01", Late(1) },
        { Ready, "5 10:00", "5 10:14", Late(14) },
        { Ready, "5 10:00", "5 10:15", Late(15) },
        { Ready, "5 10:00", "5 10:16", Still("5 10:00") },
        { Ready, "5 10:00", "5 18:00", Still("5 10:00") },
        { Cured, "5 10:00", "30 18:00", Still("5 10:00") },
        { StockLow, "5 10:00", "5 11:00", Still("5 10:00") },
        { AskedFor, "5 10:00", "5 11:00", Still("5 10:00") },
        { Torch, "5 10:00", "5 10:09", Late(9) },
        { Torch, "5 10:00", "5 10:16", new PingVerdict.TooLate(new WhatHolds.Passed(Plans.At("5 10:00"))) },
        // A clock set back: what is planned is not said before.
        { Ready, "5 10:00", "5 09:00", Hold("5 10:00") },
        { Ready, "5 10:00", "3 10:00", Hold("5 10:00") },
        // Quiet hours hold back all; what they held back is not late in the morning.
        { Ready, "5 22:00", "5 22:00", Hold("6 08:00") },
        { AskedFor, "5 23:00", "5 23:00", Hold("6 08:00") },
        { Ready, "5 22:00", "6 08:00", new PingVerdict.Send() },
        { Ready, "6 07:50", "6 08:00", new PingVerdict.Send() },
        { Ready, "5 21:59", "6 08:00", new PingVerdict.Send() },
        { Ready, "6 03:00", "6 08:10", Late(10) },
        { Ready, "6 03:00", "6 08:16", Still("6 03:00") },
        { Ready, "5 21:00", "6 08:00", Still("5 21:00") },
        { Ready, "5 21:50", "5 21:55", Late(5) },
        { Torch, "5 23:00", "5 23:00", No(WhyUnwanted.QuietMinutes) },
    };

    public static TheoryData<PingKind, string, string, SubjectState, PingVerdict> WithState => new()
    {
        // Nothing about what is over.
        { Ready, "5 10:00", "5 10:00", Over(WhyUnwanted.Undone), No(WhyUnwanted.Undone) },
        { Ready, "5 10:00", "5 10:00", Over(WhyUnwanted.Coated), No(WhyUnwanted.Coated) },
        { Ready, "5 10:00", "5 10:00", Over(WhyUnwanted.Sold), No(WhyUnwanted.Sold) },
        { Ready, "5 10:00", "5 10:00", Over(WhyUnwanted.Binned), No(WhyUnwanted.Binned) },
        { Cured, "5 10:00", "5 10:00", Over(WhyUnwanted.Failed), No(WhyUnwanted.Failed) },
        { Old, "5 10:00", "5 10:00", Over(WhyUnwanted.Stopped), No(WhyUnwanted.Stopped) },
        { StockLow, "5 10:00", "5 10:00", Over(WhyUnwanted.Settled), No(WhyUnwanted.Settled) },
        { AskedFor, "5 10:00", "5 10:00", Over(WhyUnwanted.MemberLeft), No(WhyUnwanted.MemberLeft) },
        { Ready, "5 10:00", "25 23:00", Over(WhyUnwanted.Sold), No(WhyUnwanted.Sold) },
        // A coat ends what was waited for, not what was asked for.
        { AskedFor, "5 10:00", "5 10:00", Over(WhyUnwanted.Coated), new PingVerdict.Send() },
        { AskedFor, "5 10:00", "5 10:00", Over(WhyUnwanted.Sold), No(WhyUnwanted.Sold) },
        { DueDanger, "5 10:00", "5 10:00", Over(WhyUnwanted.Coated), new PingVerdict.Send() },
        // The room got colder.
        { Ready, "5 10:00", "5 10:00", Standing("7 11:00"), Replan("7 11:00") },
        { WindowOpens, "5 10:00", "5 10:00", Window("5 12:00", "5 20:00"), Replan("5 12:00") },
        { Ready, "5 10:00", "5 10:00", Standing("4 11:00"), new PingVerdict.Send() },
        // Windows: open, closing, closed; never "do it now" of a closed one.
        { WindowOpens, "5 10:00", "5 10:00", Window("5 10:00", "5 20:00"), new PingVerdict.Send() },
        { WindowOpens, "5 10:00", "5 10:15", Window("5 10:00", "5 20:00"), Late(15) },
        { WindowOpens, "5 10:00", "5 10:16", Window("5 10:00", "5 20:00"), OpenUntil("5 20:00") },
        { WindowCloses, "5 18:00", "5 20:00", Window("5 18:00", "5 20:00"), Closed("5 20:00") },
        { WindowCloses, "5 18:00", "5 18:05", Window("5 18:00", "5 18:05"), Closed("5 18:05") },
        { WindowCloses, "5 18:00", "5 18:04", Window("5 18:00", "5 18:05"), Late(4) },
        { WindowOpens, "5 10:00", "6 10:00", Window("5 10:00", "5 20:00"), Closed("5 20:00") },
        { WindowOpens, "5 10:00", "30 10:00", Window("5 10:00", "5 20:00"), Closed("5 20:00") },
        // A closing window that nobody asked to be woken by is held, and said to have closed.
        { WindowCloses, "6 02:00", "6 02:00", Window("6 02:00", "6 04:00"), Hold("6 08:00") },
        { WindowCloses, "6 02:00", "6 08:00", Window("6 02:00", "6 04:00"), Closed("6 04:00") },
        { WindowTonight, "5 21:00", "5 21:00", Window("5 21:00", "6 04:00"), new PingVerdict.Send() },
        { WindowTonight, "5 21:00", "5 23:00", Window("5 21:00", "6 04:00"), No(WhyUnwanted.QuietMinutes) },
    };

    [Theory]
    [MemberData(nameof(AsPlanned))]
    public void Time_and_quiet_hours_decide(PingKind kind, string planned, string now, PingVerdict verdict) =>
        Assert.Equal(verdict, Of(kind, planned, now, new SubjectState.Standing(Plans.At(planned)), Plans.Wishes));

    [Theory]
    [MemberData(nameof(WithState))]
    public void What_holds_now_decides(
        PingKind kind, string planned, string now, SubjectState state, PingVerdict verdict) =>
        Assert.Equal(verdict, Of(kind, planned, now, state, Plans.Wishes));

    [Fact]
    public void Who_asked_for_it_is_woken_by_a_closing_window()
    {
        var wishes = Plans.Wishes with { WakeForWindow = true };
        var window = Window("6 02:00", "6 04:00");

        Assert.Equal(new PingVerdict.Send(), Of(WindowCloses, "6 02:00", "6 02:00", window, wishes));
        Assert.Equal(Late(10), Of(WindowCloses, "6 02:00", "6 02:10", window, wishes));
        Assert.Equal(Hold("6 08:00"), Of(WindowOpens, "6 02:00", "6 02:00", window, wishes));
        Assert.Equal(Hold("6 08:00"), Of(Ready, "6 02:00", "6 02:00", Standing("6 02:00"), wishes));
    }

    [Fact]
    public void A_kind_that_is_switched_off_is_not_said()
    {
        var wishes = Plans.Wishes with { Muted = new HashSet<PingKind> { Torch } };

        Assert.Equal(No(WhyUnwanted.Muted), Of(Torch, "5 10:00", "5 10:00", Standing("5 10:00"), wishes));
        Assert.Equal(new PingVerdict.Send(), Of(Ready, "5 10:00", "5 10:00", Standing("5 10:00"), wishes));
    }

    [Theory]
    [InlineData("5 10:00", "7 10:00", "7 10:00")]
    [InlineData("7 09:59", "7 10:00", "7 10:00")]
    public void A_snooze_or_not_yet_bars_it(string now, string bar, string until) => Assert.Equal(
        Hold(until),
        Of(Ready, "5 10:00", now, Standing("5 10:00"), Plans.Wishes with { NotBefore = Plans.At(bar) }));

    [Fact]
    public void What_was_snoozed_is_late_only_by_its_new_hour()
    {
        var snoozed = Plans.Wishes with { NotBefore = Plans.At("7 10:00") };

        Assert.Equal(new PingVerdict.Send(), Of(Ready, "5 10:00", "7 10:00", Standing("5 10:00"), snoozed));
        Assert.Equal(Late(3), Of(Ready, "5 10:00", "7 10:03", Standing("5 10:00"), snoozed));
    }

    [Theory]
    [InlineData(1, 3)]        // in time
    [InlineData(7, 10)]       // one more has come: the second
    [InlineData(28, 31)]      // four missed: the last
    public void Missed_weeks_become_one(int days, int latest)
    {
        var slot = new CivilSlot(Plans.Plain, Sunday, new DateOnly(2026, 5, 3));
        var week = PlannedPing.For(slot, Week, Plans.Studio, Plans.Chat);
        var verdict = PingVerdict.Of(week, week.At.AddDays(days), Standing("3 09:00"), Plans.Wishes);

        PingVerdict expected = latest == 3
            ? Still("3 09:00")
            : new PingVerdict.Superseded(week.ForSlot(slot with { Date = new DateOnly(2026, 5, latest) }));
        Assert.Equal(expected, verdict);
    }

    [Fact]
    public void The_first_stage_with_a_verdict_gives_it()
    {
        // Sold, muted, moved, barred and quiet at once: that it is sold is what the log should say.
        var wishes = Plans.Wishes with { Muted = new HashSet<PingKind> { Ready }, NotBefore = Plans.At("9 10:00") };

        Assert.Equal(No(WhyUnwanted.Sold), Of(Ready, "5 23:00", "5 23:00", Over(WhyUnwanted.Sold), wishes));
        Assert.Equal(No(WhyUnwanted.Muted), Of(Ready, "5 23:00", "5 23:00", Standing("8 10:00"), wishes));
    }

    private static PingVerdict Of(PingKind kind, string planned, string now, SubjectState state, PingWishes wishes) =>
        PingVerdict.Of(Plans.Planned(kind, Plans.At(planned)), Plans.At(now), state, wishes);

    private static PingVerdict.SendLate Late(int minutes) => new(TimeSpan.FromMinutes(minutes));

    private static PingVerdict.Hold Hold(string until) => new(Plans.At(until));

    private static PingVerdict.Replan Replan(string at) => new(Plans.At(at));

    private static PingVerdict.Unwanted No(WhyUnwanted why) => new(why);

    private static PingVerdict.TooLate Still(string since) => new(new WhatHolds.Still(Plans.At(since)));

    private static PingVerdict.TooLate OpenUntil(string closes) => new(new WhatHolds.OpenUntil(Plans.At(closes)));

    private static PingVerdict.TooLate Closed(string at) => new(new WhatHolds.Closed(Plans.At(at)));

    private static SubjectState.Standing Standing(string due) => new(Plans.At(due));

    private static SubjectState.Window Window(string due, string closes) => new(Plans.At(due), Plans.At(closes));

    private static SubjectState.Over Over(WhyUnwanted why) => new(why);
}
