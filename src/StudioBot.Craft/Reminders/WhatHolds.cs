namespace StudioBot.Craft.Reminders;

/// <summary>What a ping that missed its hour says instead; never "do it now" of what can't be done any more.</summary>
public abstract record WhatHolds
{
    private WhatHolds()
    {
    }

    /// <summary>It still holds, and has since then.</summary>
    public sealed record Still(DateTimeOffset Since) : WhatHolds;

    /// <summary>The window is open yet.</summary>
    public sealed record OpenUntil(DateTimeOffset Closes) : WhatHolds;

    /// <summary>The window has closed.</summary>
    public sealed record Closed(DateTimeOffset At) : WhatHolds;

    /// <summary>Its minutes have gone by.</summary>
    public sealed record Passed(DateTimeOffset At) : WhatHolds;
}
