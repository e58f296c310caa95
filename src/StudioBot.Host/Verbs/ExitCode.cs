namespace StudioBot.Host.Verbs;

/// <summary>How the program ends; from 64 on the numbers are those of sysexits.</summary>
internal enum ExitCode
{
    /// <summary>Done.</summary>
    Done = 0,

    /// <summary>A check found something.</summary>
    CheckFailed = 1,

    /// <summary>The message was answered with an error, or would have booked.</summary>
    NotAnswered = 2,

    /// <summary>The command line can't be read.</summary>
    CommandLine = 64,

    /// <summary>The studio's file is damaged, gone while its backups are there, or of a newer program.</summary>
    Damaged = 65,

    /// <summary>Nothing can be written there.</summary>
    CannotWrite = 73,

    /// <summary>Another instance has the studio.</summary>
    InUse = 75,

    /// <summary>The settings.</summary>
    Settings = 78,
}
