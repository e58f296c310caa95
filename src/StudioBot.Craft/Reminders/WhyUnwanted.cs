namespace StudioBot.Craft.Reminders;

/// <summary>Why a ping is not said at all.</summary>
public enum WhyUnwanted
{
    /// <summary>What it came from was undone.</summary>
    Undone,

    /// <summary>The coat failed.</summary>
    Failed,

    /// <summary>The piece has its next coat.</summary>
    Coated,

    /// <summary>The piece is sold.</summary>
    Sold,

    /// <summary>The piece is binned.</summary>
    Binned,

    /// <summary>The lot was stopped.</summary>
    Stopped,

    /// <summary>It settled by itself: the level rose, the promise was kept, the lot is used up.</summary>
    Settled,

    /// <summary>Whom it is for has left.</summary>
    MemberLeft,

    /// <summary>They do not want this kind.</summary>
    Muted,

    /// <summary>It is about minutes, and they lie in quiet hours.</summary>
    QuietMinutes,
}
