namespace StudioBot.Craft.Reminders;

/// <summary>A time on the wall that comes again, every day or once a week.</summary>
/// <param name="At">The time of day.</param>
/// <param name="On">The day of the week; none: every day.</param>
public sealed record CivilRule(TimeOnly At, DayOfWeek? On = null)
{
    /// <summary>Whether this day has a slot.</summary>
    public bool FallsOn(DateOnly date) => On is null || date.DayOfWeek == On;
}
