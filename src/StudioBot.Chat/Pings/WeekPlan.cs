using System.Globalization;
using StudioBot.Craft.Reminders;
using StudioBot.Records;
using StudioBot.Records.Reminders;
using Rule = StudioBot.Records.Reminders.CivilRule;

namespace StudioBot.Chat.Pings;

/// <summary>Keeps the one row of the table that waits for the studio's next week.</summary>
internal static class WeekPlan
{
    private const string Day = "yyyy-MM-dd";
    private const PingKind Kind = PingKind.Week;

    // Which chats hear it is known when it is due.
    private const long NoChat = 0;

    /// <summary>What it is about.</summary>
    public static PingSubject Subject { get; } = new(PingSubjectKind.Studio, 1);

    /// <summary>A week waits, by the day, the hour and the zone that the studio has set now.</summary>
    public static void Keep(StudioSession session, PingTurn turn)
    {
        if (session.Studio.Settings() is null)
        {
            return;
        }

        var rule = WeekSetting.Read(session.Studio.Setting(WeekSetting.Name));
        var slot = turn.Zone.Next(rule, turn.Now);
        if (Waiting(session) is not { } row)
        {
            while (!Plan(session, Of(slot)))
            {
                slot = slot.Next;
            }
        }
        else if (row.What.Civil != RuleOf(slot))
        {
            while (!session.Reminders.Follow(row.Id, Row(Of(slot))))
            {
                slot = slot.Next;
            }
        }
    }

    /// <summary>The row that waits; none where none does.</summary>
    public static Reminder? Waiting(StudioSession session) =>
        session.Reminders.WaitingAbout(Kind.ToString(), PingSubjects.Kept(Subject)) is [var first, ..] ? first : null;

    /// <summary>Plans this week, unless it was planned before.</summary>
    public static bool Plan(StudioSession session, PlannedPing week) => session.Reminders.Plan(Row(week));

    /// <summary>The week that a row stands for.</summary>
    public static PlannedPing Read(Reminder row)
    {
        var civil = row.What.Civil ?? throw new FormatException($"Reminder {row.Id} follows no rule.");
        var zone = new StudioZone(TimeZoneInfo.FindSystemTimeZoneById(civil.Zone));
        var date = DateOnly.ParseExact(
            row.What.OccurrenceKey.Split('/')[^1], Day, CultureInfo.InvariantCulture);
        return Of(new CivilSlot(zone, WeekSetting.Read(civil.Rule), date));
    }

    private static PlannedPing Of(CivilSlot slot) => PlannedPing.For(slot, Kind, Subject, NoChat);

    private static NewReminder Row(PlannedPing week) =>
        new(Kind.ToString(), PingSubjects.Kept(Subject), week.At, week.Key.ToString()) { Civil = RuleOf(week.Slot!) };

    private static Rule RuleOf(CivilSlot slot) => new(WeekSetting.Kept(slot.Rule), slot.Zone.Name);
}
