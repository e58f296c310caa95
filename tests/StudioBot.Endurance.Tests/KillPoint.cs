namespace StudioBot.Endurance.Tests;

/// <summary>Where the service is killed.</summary>
internal enum KillPoint
{
    /// <summary>Somewhere before it asks for the first update.</summary>
    Starting,

    /// <summary>Some moment from the handing out of an update on, mostly before its commit.</summary>
    BeforeCommit,

    /// <summary>The record can be read in the file.</summary>
    BehindCommit,

    /// <summary>A message is claimed to be sent.</summary>
    BeforeSend,

    /// <summary>The message has arrived, and nobody told the service so.</summary>
    BehindSend,

    /// <summary>The service is just told that the message has arrived.</summary>
    BeforeMark,

    /// <summary>It is marked as sent.</summary>
    BehindMark,

    /// <summary>In the gathering, committing or sending of what was missed.</summary>
    Digest,

    /// <summary>While an older file is brought up to date.</summary>
    SchemaStep,

    /// <summary>While the log is written back into the file.</summary>
    Checkpoint,

    /// <summary>While a backup that a steward asked for is copied and proven.</summary>
    Backup,

    /// <summary>At any moment after the first poll.</summary>
    Anywhere,
}
