namespace StudioBot.Records.Backups;

/// <summary>A copy of a studio that stood its proof, as the manifest beside it tells.</summary>
/// <param name="Name">Its file's name in the folder of backups; never a path.</param>
/// <param name="Kind">Why it was made.</param>
/// <param name="MadeAt">When, to the second; before an upgrade: when the studio was last written.</param>
/// <param name="Version">The version of its schema.</param>
/// <param name="Bytes">Its size.</param>
/// <param name="Sha256">The SHA-256 of its bytes, 64 hexadecimal letters.</param>
/// <param name="Rows">How many rows each table holds.</param>
public sealed record Backup(
    string Name,
    BackupKind Kind,
    DateTimeOffset MadeAt,
    int Version,
    long Bytes,
    string Sha256,
    IReadOnlyDictionary<string, long> Rows);
