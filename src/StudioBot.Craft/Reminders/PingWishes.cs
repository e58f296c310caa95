namespace StudioBot.Craft.Reminders;

/// <summary>What those who would hear a ping want.</summary>
/// <param name="Quiet">Their quiet hours; in a group the studio's.</param>
public sealed record PingWishes(QuietHours Quiet)
{
    /// <summary>The kinds they switched off.</summary>
    public IReadOnlySet<PingKind> Muted { get; init; } = new HashSet<PingKind>();

    /// <summary>They asked to be woken by a closing window.</summary>
    public bool WakeForWindow { get; init; }

    /// <summary>Not before this: the ping was snoozed, or the maker said <c>notyet</c>.</summary>
    public DateTimeOffset? NotBefore { get; init; }
}
