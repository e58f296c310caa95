namespace StudioBot.Records;

/// <summary>The studio's file is gone or empty although it has a past: beginning anew would hide the loss.</summary>
/// <param name="path">Where it should be.</param>
/// <param name="past">What tells that there was one: the folder of its backups, or a file that was kept aside.</param>
public sealed class LostStudioException(string path, string past)
    : Exception($"{path} is missing or empty, but {past} is there.")
{
    /// <summary>What tells that there was one.</summary>
    public string Past { get; } = past;
}
