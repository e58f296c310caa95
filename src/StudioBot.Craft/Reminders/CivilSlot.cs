namespace StudioBot.Craft.Reminders;

/// <summary>
/// One turn of a civil rule, known by its date. Slots are counted from date to date and never from the clock, so
/// that no change of clocks, zone or zone data can double or lose one.
/// </summary>
/// <param name="Zone">The zone that is asked for the instant.</param>
/// <param name="Rule">The rule it belongs to.</param>
/// <param name="Date">The day on the wall.</param>
public sealed record CivilSlot(StudioZone Zone, CivilRule Rule, DateOnly Date)
{
    /// <summary>When it comes, by what the zone says today.</summary>
    public DateTimeOffset At => Zone.InstantOf(Date, Rule.At);

    /// <summary>The slot after this one; a day that never came has none.</summary>
    public CivilSlot Next => Seek(Date.AddDays(1), 1);

    /// <summary>The last slot that has come by now; this one when none after it has.</summary>
    public CivilSlot LatestBy(DateTimeOffset now)
    {
        var latest = Seek(Zone.DateOf(now), -1);
        latest = latest.At <= now ? latest : Seek(latest.Date.AddDays(-1), -1);
        return latest.Date > Date ? latest : this;
    }

    private CivilSlot Seek(DateOnly date, int step)
    {
        while (!Rule.FallsOn(date) || !Zone.Has(date))
        {
            date = date.AddDays(step);
        }

        return this with { Date = date };
    }
}
