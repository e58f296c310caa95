namespace StudioBot.Records.Reminders;

/// <summary>What a member wants to be told by the bot itself.</summary>
public sealed record Wishes
{
    /// <summary>Their quiet hours, to the minute; none: the studio's.</summary>
    public QuietTimes? Quiet { get; init; }

    /// <summary>They want to be woken by a closing window.</summary>
    public bool Woken { get; init; }

    /// <summary>The kinds of pings they do not want; each once.</summary>
    public IReadOnlyList<string> Unwanted { get; init; } = [];
}
