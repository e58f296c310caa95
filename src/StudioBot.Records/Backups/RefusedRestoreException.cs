namespace StudioBot.Records.Backups;

/// <summary>The file is no backup that could be brought back; nothing was changed.</summary>
/// <param name="why">What is wrong with it, a sentence.</param>
public sealed class RefusedRestoreException(string why) : Exception(why);
