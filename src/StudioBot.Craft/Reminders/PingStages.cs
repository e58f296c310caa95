namespace StudioBot.Craft.Reminders;

/// <summary>The questions put to a due ping, one after the other; null: nothing against it here.</summary>
internal static class PingStages
{
    /// <summary>Up to this, a ping is on time.</summary>
    public static readonly TimeSpan OnTime = TimeSpan.FromMinutes(1);

    /// <summary>Up to this, a late ping is still said by itself.</summary>
    public static readonly TimeSpan Grace = TimeSpan.FromMinutes(15);

    /// <summary>Is there anything to say; is it time; may it ring; does it still hold?</summary>
    public static IReadOnlyList<Func<DuePing, PingVerdict?>> InOrder { get; } =
        [Over, Muted, Overtaken, Barred, Moved, Quiet, Closed, Late];

    public static PingVerdict? Over(DuePing due) => due.State switch
    {
        SubjectState.Over { Why: WhyUnwanted.Coated } when !due.Policy.EndsWithCoat => null,
        SubjectState.Over over => new PingVerdict.Unwanted(over.Why),
        _ => null,
    };

    public static PingVerdict? Muted(DuePing due) =>
        due.Wishes.Muted.Contains(due.Planned.Kind) ? new PingVerdict.Unwanted(WhyUnwanted.Muted) : null;

    /// <summary>Four missed weeks are one: the last.</summary>
    public static PingVerdict? Overtaken(DuePing due) =>
        due.Planned.Slot is { } slot && slot.LatestBy(due.Now) is var latest && latest.Date > slot.Date
            ? new PingVerdict.Superseded(due.Planned.ForSlot(latest))
            : null;

    /// <summary>Snoozed, not yet, or a clock that was set back.</summary>
    public static PingVerdict? Barred(DuePing due) =>
        due.Wanted > due.Now ? new PingVerdict.Hold(due.Wanted) : null;

    /// <summary>An estimate or a window has slid away since it was planned.</summary>
    public static PingVerdict? Moved(DuePing due) => due.State switch
    {
        SubjectState.Standing standing when standing.Due > due.Now => new PingVerdict.Replan(standing.Due),
        SubjectState.Window window when window.Due > due.Now => new PingVerdict.Replan(window.Due),
        _ => null,
    };

    public static PingVerdict? Quiet(DuePing due) => due.Wishes.Quiet.StretchAt(due.Now) switch
    {
        null => null,
        _ when due.Wakes => null,
        _ when due.Policy.Lapses || due.Planned.Kind is PingKind.WindowTonight =>
            new PingVerdict.Unwanted(WhyUnwanted.QuietMinutes),
        var stretch => new PingVerdict.Hold(stretch.Until),
    };

    public static PingVerdict? Closed(DuePing due) =>
        due.State is SubjectState.Window window && window.Closes <= due.Now
            ? new PingVerdict.TooLate(new WhatHolds.Closed(window.Closes))
            : null;

    public static PingVerdict? Late(DuePing due) => Lateness(due) switch
    {
        var late when late < OnTime => null,
        var late when late <= Grace => new PingVerdict.SendLate(late),
        _ when due.Policy.Lapses => new PingVerdict.TooLate(new WhatHolds.Passed(due.Planned.At)),
        _ when due.State is SubjectState.Window window =>
            new PingVerdict.TooLate(new WhatHolds.OpenUntil(window.Closes)),
        _ => new PingVerdict.TooLate(new WhatHolds.Still(due.Planned.At)),
    };

    // A night between is nobody's lateness: what fell into it, or so shortly before that it could still have come
    // within its grace, was to come in the morning.
    private static TimeSpan Lateness(DuePing due)
    {
        var quiet = due.Wishes.Quiet;
        var night = due.Wakes ? null : quiet.StretchAt(due.Wanted) ?? quiet.StretchAt(due.Wanted + Grace);
        return due.Now - (night is not null && night.Until <= due.Now ? night.Until : due.Wanted);
    }
}
