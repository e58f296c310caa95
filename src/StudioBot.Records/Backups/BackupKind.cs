namespace StudioBot.Records.Backups;

/// <summary>Why a backup was made.</summary>
public enum BackupKind
{
    /// <summary>By the night's round.</summary>
    Daily,

    /// <summary>Somebody asked for it.</summary>
    Asked,

    /// <summary>Before a newer program changed the file.</summary>
    Upgrade,
}
