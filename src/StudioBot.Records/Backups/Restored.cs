namespace StudioBot.Records.Backups;

/// <summary>What was brought back.</summary>
/// <param name="Version">The version of its schema; an older one is brought up to date when it is opened.</param>
/// <param name="IsByManifest">A manifest stood beside it and its SHA-256 is right.</param>
/// <param name="KeptAs">Where the file went that was there before; none where there was none.</param>
public sealed record Restored(int Version, bool IsByManifest, string? KeptAs);
