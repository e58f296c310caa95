using Microsoft.Data.Sqlite;

namespace StudioBot.Records;

/// <summary>The disk takes nothing more: it is full, broken, or may only be read. Nothing of the work stands.</summary>
public sealed class UnwritableStudioException : Exception
{
    // SQLite's own numbers for a file that may only be read, for a disk that fails, and for a full one.
    private const int ReadOnly = 8;
    private const int Failing = 10;
    private const int Full = 13;

    internal UnwritableStudioException(SqliteException why)
        : base(Words(why.SqliteErrorCode), why)
    {
    }

    /// <summary>Whether this trouble is the disk's.</summary>
    internal static bool Is(SqliteException trouble) => trouble.SqliteErrorCode is ReadOnly or Failing or Full;

    private static string Words(int code) => code switch
    {
        Full => "The disk is full.",
        ReadOnly => "The studio's file may only be read.",
        _ => "The disk fails.",
    };
}
