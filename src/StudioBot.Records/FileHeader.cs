using System.Buffers.Binary;

namespace StudioBot.Records;

/// <summary>What the first hundred bytes of a file tell, read without the database: nothing of it is trusted yet.
/// </summary>
internal static class FileHeader
{
    private const int Length = 100;
    private const int VersionAt = 60;   // the user version, big-endian, by the file format's own description

    /// <summary>The version of its schema; none where it is no database at all.</summary>
    /// <exception cref="IOException">It can't be read.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public static int? VersionOf(string path)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        var header = new byte[Length];
        return file.ReadAtLeast(header, Length, throwOnEndOfStream: false) == Length
            && header.AsSpan().StartsWith("SQLite format 3\0"u8)
            ? BinaryPrimitives.ReadInt32BigEndian(header.AsSpan(VersionAt))
            : null;
    }
}
