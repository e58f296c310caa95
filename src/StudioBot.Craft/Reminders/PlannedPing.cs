namespace StudioBot.Craft.Reminders;

/// <summary>Something to say, when, and in which chat.</summary>
/// <param name="Key">Which ping it is.</param>
/// <param name="Chat">Where it is said.</param>
/// <param name="At">When.</param>
public sealed record PlannedPing(OccurrenceKey Key, long Chat, DateTimeOffset At)
{
    /// <summary>The turn of a civil rule that it stands for; null for one that hangs from a duration.</summary>
    public CivilSlot? Slot { get; init; }

    /// <summary>What is said.</summary>
    public PingKind Kind => Key.Kind;

    /// <summary>What it is about.</summary>
    public PingSubject Subject => Key.Subject;

    /// <summary>The one to plan once this one is dealt with; null for one that comes only once.</summary>
    public PlannedPing? Following => Slot is null ? null : ForSlot(Slot.Next);

    /// <summary>The ping of a civil rule's slot.</summary>
    public static PlannedPing For(CivilSlot slot, PingKind kind, PingSubject subject, long chat) =>
        new(OccurrenceKey.On(kind, subject, slot.Date), chat, slot.At) { Slot = slot };

    /// <summary>The same thing said for another slot.</summary>
    public PlannedPing ForSlot(CivilSlot slot) => For(slot, Kind, Subject, Chat);

    /// <summary>
    /// This ping when the studio moves, or its zone's data change: a civil rule keeps its wall time, and is due now
    /// when that has passed there; a duration stays as it is.
    /// </summary>
    public PlannedPing In(StudioZone zone, DateTimeOffset now)
    {
        if (Slot is null)
        {
            return this;
        }

        var moved = Slot with { Zone = zone };
        return this with { Slot = moved, At = moved.At > now ? moved.At : now };
    }
}
