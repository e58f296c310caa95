namespace StudioBot.Host.Rehearsal;

/// <summary>Where a rehearsed service dies.</summary>
internal enum CrashPoint
{
    /// <summary>All is done, nothing is committed.</summary>
    BeforeCommit,

    /// <summary>All is committed, nothing is sent.</summary>
    AfterCommit,

    /// <summary>All is sent, nothing is marked as sent.</summary>
    AfterSend,
}
