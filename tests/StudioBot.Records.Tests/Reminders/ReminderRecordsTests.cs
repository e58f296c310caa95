using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Records.Acts;
using StudioBot.Records.Members;
using StudioBot.Records.Reminders;
using static StudioBot.Records.Tests.Saying;

namespace StudioBot.Records.Tests.Reminders;

public sealed class ReminderRecordsTests : IDisposable
{
    private readonly TemporaryStudio studio = new();
    private readonly Member mira;

    public ReminderRecordsTests() =>
        mira = studio.File.Write(session => session.Members.Add("Mira", Role.Steward, Morning));

    public void Dispose() => studio.Dispose();

    [Fact]
    public void What_is_due_comes_in_the_order_it_fell_due()
    {
        Plan(Ready(17) with { PlannedAt = Morning.AddHours(2) });
        Plan(Ready(18) with { PlannedAt = Morning.AddHours(1) });
        Plan(Ready(19) with { PlannedAt = Morning.AddHours(3) });

        Assert.Equal(["piece 18", "piece 17"], Due(2));
        Assert.Empty(Due(0.9));
        Assert.Equal(Morning.AddHours(1), studio.File.Read(view => view.Reminders.NextDue()));
    }

    [Fact]
    public void What_is_planned_or_held_waits_and_what_is_done_does_not()
    {
        Assert.Equal(0, studio.File.Read(view => view.Reminders.Waiting()));
        Plan(Ready(17));
        Plan(Ready(18));
        Plan(Ready(19));
        studio.File.Write(session =>
        {
            session.Reminders.Done(1, "send", Morning);
            session.Reminders.Hold(2, Morning.AddHours(1), "hold");
        });

        Assert.Equal(2, studio.File.Read(view => view.Reminders.Waiting()));
    }

    [Fact]
    public void All_that_was_planned_comes_back()
    {
        var what = new NewReminder("week", "studio", Morning, "week 2026-48")
        {
            ChatId = -100,
            MemberId = mira.Id,
            Civil = new CivilRule("sunday 09:00", "Europe/Vienna"),
        };
        Plan(what);

        var kept = Assert.Single(studio.File.Read(view => view.Reminders.About("studio")));
        Assert.Equal(what, kept.What);
        Assert.Equal((ReminderState.Planned, Morning), (kept.State, kept.DueAt));
        Assert.Null(kept.Verdict);
    }

    [Fact]
    public void One_occurrence_is_planned_once_even_when_it_is_done()
    {
        Assert.True(Plan(Ready(17)));
        Assert.False(Plan(Ready(17)));
        studio.File.Write(session => session.Reminders.Done(1, "send", Morning));

        Assert.False(Plan(Ready(17)));
        Assert.Empty(Due(9));
    }

    [Fact]
    public void It_is_not_said_twice()
    {
        Plan(Ready(17));
        studio.File.Write(session => session.Reminders.Done(1, "send", Morning));

        Assert.Throws<InvalidOperationException>(
            () => studio.File.Write(session => session.Reminders.Done(1, "send", Morning)));
        Assert.Throws<InvalidOperationException>(
            () => studio.File.Write(session => session.Reminders.Hold(1, Morning, "quiet")));
        Assert.Throws<InvalidOperationException>(
            () => studio.File.Write(session => session.Reminders.Replan(1, Morning)));
    }

    [Fact]
    public void What_is_held_waits_for_the_morning_and_remembers_when_it_was_planned()
    {
        Plan(Ready(17));
        studio.File.Write(session => session.Reminders.Hold(1, Morning.AddHours(8), "quiet hours"));

        Assert.Empty(Due(7.9));
        var held = Assert.Single(studio.File.Read(view => view.Reminders.Due(Morning.AddHours(8))));
        Assert.Equal((ReminderState.Held, "quiet hours", Morning), (held.State, held.Verdict, held.What.PlannedAt));
    }

    [Fact]
    public void A_new_estimate_moves_what_is_still_to_be_said()
    {
        Plan(Ready(17));
        Plan(Ready(17) with { OccurrenceKey = "ready 17 again" });
        Plan(Ready(18));
        studio.File.Write(session => session.Reminders.Done(1, "send", Morning));

        Assert.Equal(1, studio.File.Write(session =>
            session.Reminders.Replan("ready", "piece 17", Morning.AddHours(5))));

        Assert.Equal(["piece 18"], Due(4));
        Assert.Equal(["piece 18", "piece 17"], Due(5));
    }

    [Fact]
    public void Undo_lifts_what_an_act_planned()
    {
        var act = studio.File.Write(session =>
        {
            var coat = session.Said("coat", mira);
            session.Reminders.Plan(Ready(17), coat);
            return coat;
        });
        Assert.NotEmpty(Due(0));

        studio.File.Write(session => session.TakeBack(act, mira));

        Assert.Empty(Due(0));
        Assert.Equal("undone", Assert.Single(studio.File.Read(view => view.Reminders.About("piece 17"))).Verdict);
    }

    [Fact]
    public void What_an_act_lifted_comes_back_with_its_undo_unless_the_coat_is_undone_too()
    {
        var (coat, failed) = studio.File.Write(session =>
        {
            var first = session.Said("coat", mira);
            session.Reminders.Plan(Ready(17), first);
            session.Reminders.Plan(Ready(17) with { Kind = "cured", OccurrenceKey = "cured 17" });
            var second = session.Said("coat", mira, "coat 17 failed");
            Assert.Equal(2, session.Reminders.Lift("piece 17", second));
            return (first, second);
        });
        Assert.Empty(Due(0));

        studio.File.Write(session => session.TakeBack(coat, mira));
        studio.File.Write(session => session.TakeBack(failed, mira));

        var open = Assert.Single(studio.File.Read(view => view.Reminders.Due(Morning)));
        Assert.Equal("cured", open.What.Kind);
    }

    [Theory]
    [InlineData(ReminderRecords.DueNow, "reminder_due")]
    [InlineData(ReminderRecords.OfSubject, "reminder_subject")]
    public void It_is_found_without_looking_through_all_of_them(string query, string index)
    {
        using var connection = new SqliteConnection($"Data Source={studio.Path};Pooling=False");
        var plan = connection.Query("explain query plan " + query, new { now = 0, limit = 1, subject = "x" })
            .Select(row => (string)row.detail).ToList();

        Assert.Contains(
            plan, step => step.StartsWith($"SEARCH reminder USING INDEX {index}", StringComparison.Ordinal));
        Assert.DoesNotContain(plan, step => step.StartsWith("SCAN", StringComparison.Ordinal));
    }

    [Fact]
    public void Wishes_are_kept_and_go_back_with_their_act()
    {
        var wishes = new Wishes
        {
            Quiet = new QuietTimes(new TimeOnly(21, 30), new TimeOnly(7, 15)),
            Woken = true,
            Unwanted = ["torch", "week"],
        };
        var act = studio.File.Write(session =>
        {
            var me = session.Said("me", mira);
            session.Wishes.Change(mira.Id, wishes, me);
            return me;
        });

        var kept = studio.File.Read(view => view.Wishes.Of(mira.Id));
        Assert.Equal((wishes.Quiet, true), (kept.Quiet, kept.Woken));
        Assert.Equal(wishes.Unwanted, kept.Unwanted);

        Assert.IsType<Undone.Done>(studio.File.Write(session => session.TakeBack(act, mira)));
        var none = studio.File.Read(view => view.Wishes.Of(mira.Id));
        Assert.Equal((null, false), (none.Quiet, none.Woken));
        Assert.Empty(none.Unwanted);
    }

    [Fact]
    public void A_snooze_ends_and_a_shorter_one_does_not_cut_it()
    {
        studio.File.Write(session =>
        {
            session.Wishes.Snooze("low", "material 1", Morning.AddDays(2));
            session.Wishes.Snooze("low", "material 1", Morning.AddDays(1));
        });

        DateTimeOffset? Until(double days) =>
            studio.File.Read(view => view.Wishes.SnoozedUntil("low", "material 1", Morning.AddDays(days)));
        Assert.Equal(Morning.AddDays(2), Until(1.5));
        Assert.Null(Until(2));
        Assert.Null(studio.File.Read(view => view.Wishes.SnoozedUntil("low", "material 2", Morning)));
    }

    private static NewReminder Ready(int piece) => new("ready", $"piece {piece}", Morning, $"ready {piece}");

    private bool Plan(NewReminder what) => studio.File.Write(session => session.Reminders.Plan(what));

    private List<string> Due(double hours) =>
        [.. studio.File.Read(view => view.Reminders.Due(Morning.AddHours(hours))).Select(one => one.What.Subject)];
}
