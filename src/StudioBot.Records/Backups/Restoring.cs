using System.Globalization;
using System.Security.Cryptography;
using StudioBot.Records.Schema;

namespace StudioBot.Records.Backups;

/// <summary>Brings a backup back. The file may come from anywhere, so nothing in it is believed: it is judged as a copy
/// of its own, by the bytes it begins with, then its schema, then all of it, and only then takes the studio's place.
/// </summary>
public static class Restoring
{
    /// <summary>The largest file that is taken: more than a hundred years of twenty people's books.</summary>
    public const long MostBytes = 4L << 30;

    private static readonly IReadOnlyList<string> WithIt = ["", "-wal", "-shm", "-journal"];

    /// <summary>Puts the studio of this file in the place of the one that is there, which is kept aside.</summary>
    /// <param name="studioPath">The studio's file; its folder is made where there is none.</param>
    /// <param name="file">What is brought back.</param>
    /// <param name="at">The moment, by which the old file is named.</param>
    /// <exception cref="RefusedRestoreException">It is no backup, damaged, too large, or can't be read.</exception>
    /// <exception cref="NewerStudioException">It was written by a newer program.</exception>
    /// <exception cref="StudioInUseException">Another program has the studio open.</exception>
    /// <exception cref="IOException">The disk says no.</exception>
    /// <exception cref="UnauthorizedAccessException">Something may not be read or written.</exception>
    public static Restored Restore(string studioPath, string file, DateTimeOffset at)
    {
        RefuseFromOutside(file);
        if (Path.GetFullPath(file) == Path.GetFullPath(studioPath))
        {
            throw new RefusedRestoreException("It is the studio itself.");
        }

        var folder = Path.GetDirectoryName(Path.GetFullPath(studioPath))!;
        Directory.CreateDirectory(folder);
        using var claim = FileClaim.On(studioPath);
        var staged = studioPath + ".restoring";
        try
        {
            Forget(staged);
            var told = Manifest.Of(file);
            var sum = Copied(file, staged);
            if (told is not null && told.Sha256 != sum)
            {
                throw new RefusedRestoreException("Its SHA-256 is not that of its manifest.");
            }

            if (Proof.OfCopy(staged, told?.Rows) is [var finding, ..])
            {
                throw new RefusedRestoreException(finding);
            }

            var kept = PutAside(studioPath, at);
            File.Move(staged, studioPath);
            Durable.FlushFolder(folder);
            return new Restored(FileHeader.VersionOf(studioPath) ?? 0, told is not null, kept);
        }
        finally
        {
            Forget(staged);
        }
    }

    /// <summary>What a studio's file is called once it is kept aside.</summary>
    internal static string KeptAside(string studioPath, string at) => $"{studioPath}.before-restore-{at}";

    private static void Forget(string staged)
    {
        foreach (var with in WithIt)
        {
            File.Delete(staged + with);
        }
    }

    private static void RefuseFromOutside(string file)
    {
        if (HeadOf(file) is not { } version)
        {
            throw new RefusedRestoreException("It is no studio.");
        }

        if (version > SchemaSteps.Newest)
        {
            throw new NewerStudioException(version, SchemaSteps.Newest);
        }

        if (new FileInfo(file).Length > MostBytes)
        {
            throw new RefusedRestoreException($"It is larger than {MostBytes >> 30} GiB.");
        }
    }

    private static int? HeadOf(string file)
    {
        try
        {
            return FileHeader.VersionOf(file);
        }
        catch (Exception no) when (no is IOException or UnauthorizedAccessException)
        {
            throw new RefusedRestoreException($"It can't be read: {no.Message}");
        }
    }

    // Only the file itself: a log or journal beside it may name any path, and is left alone.
    private static string Copied(string file, string staged)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        using var from = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.Read);
        using var to = new FileStream(staged, FileMode.Create, FileAccess.Write);
        var piece = new byte[1 << 20];
        var bytes = 0L;
        while (from.Read(piece) is > 0 and var read)
        {
            bytes += read;
            if (bytes > MostBytes)
            {
                throw new RefusedRestoreException($"It is larger than {MostBytes >> 30} GiB.");
            }

            hash.AppendData(piece, 0, read);
            to.Write(piece, 0, read);
        }

        to.Flush(flushToDisk: true);
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    // The file first: while it is missing nothing starts, and a log without it is put on no other file.
    private static string? PutAside(string studioPath, DateTimeOffset at)
    {
        var kept = FreeName(studioPath, at);
        foreach (var with in WithIt.Where(with => File.Exists(studioPath + with)))
        {
            File.Move(studioPath + with, kept + with);
        }

        return File.Exists(kept) ? kept : null;
    }

    private static string FreeName(string studioPath, DateTimeOffset at)
    {
        var moment = at.UtcDateTime.ToString("yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture);
        for (var turn = 1; ; turn++)
        {
            var kept = KeptAside(studioPath, turn == 1 ? moment : $"{moment}-{turn}");
            if (!WithIt.Any(with => Path.Exists(kept + with)))
            {
                return kept;
            }
        }
    }
}
