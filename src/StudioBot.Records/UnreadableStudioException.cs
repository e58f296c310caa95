using Microsoft.Data.Sqlite;

namespace StudioBot.Records;

/// <summary>A file that can't be opened as a studio.</summary>
public sealed class UnreadableStudioException : Exception
{
    // SQLite's own numbers for a damaged file and for one that is none of its files.
    private static readonly int[] Damaged = [11, 26];

    internal UnreadableStudioException(SqliteException why)
        : base(why.Message, why) => IsDamaged = Damaged.Contains(why.SqliteErrorCode);

    /// <summary>The file is damaged or no studio at all; otherwise the disk or its rights stand in the way.</summary>
    public bool IsDamaged { get; }
}
