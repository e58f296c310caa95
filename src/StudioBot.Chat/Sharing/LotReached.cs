using StudioBot.Craft.Reminders;
using Booked = StudioBot.Records.Acts.Act;

namespace StudioBot.Chat.Sharing;

/// <summary>Since when a mixture holds some of a lot.</summary>
/// <param name="Surely">By steps that all named it; none: never surely.</param>
/// <param name="Maybe">By any steps; none: never.</param>
/// <param name="IsExact">The hour of it is known, not only its day.</param>
internal readonly record struct LotReached(DateTimeOffset? Surely, DateTimeOffset? Maybe, bool IsExact)
{
    /// <summary>The lot itself.</summary>
    public static LotReached FromTheBeginning { get; } = new(DateTimeOffset.MinValue, DateTimeOffset.MinValue, true);

    /// <summary>The same, or since this act where that is earlier or sure for the first time.</summary>
    public static LotReached Earlier(LotReached before, Booked act, bool isSure)
    {
        var at = act.HappenedAt;
        var isEarlier = before.Maybe is not { } maybe || at < maybe;
        return new LotReached(
            isSure && (before.Surely is not { } surely || at < surely) ? at : before.Surely,
            isEarlier ? at : before.Maybe,
            isEarlier ? IsToTheHour(act) : before.IsExact);
    }

    /// <summary>What this act took may hold some of it: also where one of the two only has a day.</summary>
    public bool MayHold(Booked act, StudioZone zone) => Maybe is { } since
        && (act.HappenedAt >= since
            || (!(IsExact && IsToTheHour(act))
                && DateOnly.FromDateTime(zone.LocalOf(act.HappenedAt)) == DateOnly.FromDateTime(zone.LocalOf(since))));

    /// <summary>What this act took came after it.</summary>
    public bool SurelyHolds(Booked act) => Surely is { } since && act.HappenedAt >= since;

    private static bool IsToTheHour(Booked act) => act.HappenedAt == act.WrittenAt;
}
