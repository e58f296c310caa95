namespace StudioBot.Craft.Reminders;

/// <summary>The hours in which nothing rings, as a rule on the wall that may run over midnight.</summary>
/// <param name="From">When they begin.</param>
/// <param name="Until">When they end, the same day or the next; the same time as they begin: never quiet.</param>
/// <param name="Zone">Whose wall it is.</param>
public sealed record QuietHours(TimeOnly From, TimeOnly Until, StudioZone Zone)
{
    /// <summary>Whether this instant is quiet.</summary>
    public bool IsQuiet(DateTimeOffset instant) => StretchAt(instant) is not null;

    /// <summary>The quiet stretch that an instant lies in; null when it lies in none.</summary>
    public QuietStretch? StretchAt(DateTimeOffset instant)
    {
        var today = Zone.DateOf(instant);
        return new[] { today.AddDays(-1), today }.Select(StretchOf).FirstOrDefault(stretch => stretch.Holds(instant));
    }

    /// <summary>This instant, or the end of the quiet stretch it lies in.</summary>
    public DateTimeOffset AwakeFrom(DateTimeOffset instant) => StretchAt(instant)?.Until ?? instant;

    private QuietStretch StretchOf(DateOnly evening) => new(
        Zone.InstantOf(evening, From),
        Zone.InstantOf(Until < From ? evening.AddDays(1) : evening, Until));
}
