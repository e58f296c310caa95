using Microsoft.Data.Sqlite;

namespace StudioBot.Records;

/// <summary>A file that can't be opened as a studio.</summary>
public sealed class UnreadableStudioException : Exception
{
    // SQLite's own numbers for a damaged file and for one that is none of its files.
    private static readonly int[] Damaged = [11, 26];

    // No permission, only to be read, not to be opened, no authorisation.
    private static readonly int[] Forbidden = [3, 8, 14, 23];

    // A disk that fails, and a full one.
    private const int Failing = 10;
    private const int Full = 13;

    internal UnreadableStudioException(SqliteException why)
        : base(Words(why), why) =>
        (IsDamaged, IsForbidden) = (Damaged.Contains(why.SqliteErrorCode), Forbidden.Contains(why.SqliteErrorCode));

    internal UnreadableStudioException(string damage)
        : base(damage) => IsDamaged = true;

    /// <summary>The file is damaged or no studio at all; otherwise the disk or its rights stand in the way.</summary>
    public bool IsDamaged { get; }

    /// <summary>This user may not read or write it.</summary>
    public bool IsForbidden { get; }

    // On a full disk, making what lies beside the file fails in the same way as on a broken one.
    private static string Words(SqliteException why) => why.SqliteErrorCode switch
    {
        Full => "The disk is full.",
        Failing => "The disk is full, or fails.",
        _ => why.Message,
    };
}
