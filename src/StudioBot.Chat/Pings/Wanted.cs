using StudioBot.Craft.Reminders;

namespace StudioBot.Chat.Pings;

/// <summary>Something that is to be said later.</summary>
/// <param name="Subject">What about.</param>
/// <param name="At">When.</param>
/// <param name="Since">What was said of it before then does not count; none: once for ever.</param>
internal sealed record Wanted(PingSubject Subject, DateTimeOffset At, DateTimeOffset? Since = null)
{
    /// <summary>What waits moves with what is known; else it stays where it was planned first.</summary>
    public bool Moves { get; init; } = true;
}
