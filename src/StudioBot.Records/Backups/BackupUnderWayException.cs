namespace StudioBot.Records.Backups;

/// <summary>Another backup of this studio is being made at this moment; it will be done soon.</summary>
public sealed class BackupUnderWayException(Exception inner)
    : Exception("Another backup of this studio is being made at this moment.", inner);
