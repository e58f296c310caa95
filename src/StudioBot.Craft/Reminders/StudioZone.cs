namespace StudioBot.Craft.Reminders;

/// <summary>The one place where an instant becomes wall time, and wall time an instant.</summary>
/// <param name="Zone">The studio's zone, handed in: nothing here knows where it runs.</param>
/// <remarks>
/// Only the road from instant to wall time is asked of the zone; the way back is worked out from it. It holds for
/// zones that change their clocks at most once in two days, as all do.
/// </remarks>
public sealed record StudioZone(TimeZoneInfo Zone)
{
    // No offset reaches a day, so a day to either side of a wall time stands before and after any change near it.
    private static readonly TimeSpan Aside = TimeSpan.FromDays(1);

    /// <summary>The zone's name, as it is kept.</summary>
    public string Name => Zone.Id;

    /// <summary>What the clock on the wall shows.</summary>
    public DateTime LocalOf(DateTimeOffset instant) => TimeZoneInfo.ConvertTime(instant, Zone).DateTime;

    /// <summary>The day it is on the wall.</summary>
    public DateOnly DateOf(DateTimeOffset instant) => DateOnly.FromDateTime(LocalOf(instant));

    /// <summary>
    /// When the wall shows this: of an hour that comes twice the first pass; for an hour that is skipped, the first
    /// instant after it.
    /// </summary>
    public DateTimeOffset InstantOf(DateOnly date, TimeOnly time)
    {
        var wall = date.ToDateTime(time);
        var before = AtOffset(wall, Zone.GetUtcOffset(AtOffset(wall, Aside)));
        var after = AtOffset(wall, Zone.GetUtcOffset(AtOffset(wall, -Aside)));
        var (first, second) = before < after ? (before, after) : (after, before);
        return LocalOf(first) == wall ? first
            : LocalOf(second) == wall ? second
            : FirstAfter(wall, first, second);
    }

    /// <summary>Whether this day came at all: west of the date line a few days were skipped whole.</summary>
    public bool Has(DateOnly date) => DateOf(InstantOf(date, TimeOnly.MinValue)) == date;

    /// <summary>The first slot of a rule that lies after an instant.</summary>
    public CivilSlot Next(CivilRule rule, DateTimeOffset after)
    {
        // A day back: where midnight is skipped, a late hour of yesterday falls on today.
        var slot = new CivilSlot(this, rule, DateOf(after).AddDays(-2)).Next;
        while (slot.At <= after)
        {
            slot = slot.Next;
        }

        return slot;
    }

    private static DateTimeOffset AtOffset(DateTime wall, TimeSpan offset) => new(wall - offset, TimeSpan.Zero);

    // The clock jumps once between the two: until then it shows less than was asked for, from then on more.
    private DateTimeOffset FirstAfter(DateTime wall, DateTimeOffset less, DateTimeOffset more)
    {
        while (more - less > TimeSpan.FromTicks(1))
        {
            var middle = less + (more - less) / 2;
            (less, more) = LocalOf(middle) < wall ? (middle, more) : (less, middle);
        }

        return more;
    }
}
