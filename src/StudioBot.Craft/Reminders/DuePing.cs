namespace StudioBot.Craft.Reminders;

/// <summary>All that a verdict depends on.</summary>
internal sealed record DuePing(PlannedPing Planned, DateTimeOffset Now, SubjectState State, PingWishes Wishes)
{
    public PingPolicy Policy => PingPolicy.Of(Planned.Kind);

    public bool Wakes => Policy.MayWake && Wishes.WakeForWindow;

    /// <summary>When it was to come, after any snooze.</summary>
    public DateTimeOffset Wanted =>
        Wishes.NotBefore is { } bar && bar > Planned.At ? bar : Planned.At;
}
