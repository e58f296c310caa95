using System.Globalization;
using Microsoft.Data.Sqlite;
using StudioBot.Records.Schema;

namespace StudioBot.Records.Backups;

/// <summary>The proven copies of one studio, in the folder <c>backups</c> beside its file. A copy counts once its
/// manifest stands beside it, and that comes last.</summary>
public sealed class BackupFolder
{
    private const string Unfinished = ".unfinished";

    // The moment in a name, as a pattern of files.
    private const string AnyMoment = "????????T??????Z";

    private readonly string studio;

    private BackupFolder(string studio) => this.studio = studio;

    /// <summary>The folder, whole; it need not exist.</summary>
    public string Folder => Path.Combine(Path.GetDirectoryName(studio)!, "backups");

    /// <summary>The backups of the studio in this file.</summary>
    public static BackupFolder Of(string studioPath) => new(Path.GetFullPath(studioPath));

    /// <summary>Where a backup stands.</summary>
    public string FileOf(Backup backup) => Path.Combine(Folder, backup.Name);

    /// <summary>Where its manifest stands.</summary>
    public string ManifestOf(Backup backup) => Manifest.Beside(FileOf(backup));

    /// <summary>All there are, the newest first, as their manifests tell.</summary>
    /// <exception cref="IOException">The folder can't be read.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public IReadOnlyList<Backup> All() => !Directory.Exists(Folder)
        ? []
        : [.. Directory.EnumerateFiles(Folder, $"{Stem}-{AnyMoment}-*.db")
            .Select(Manifest.Of)
            .OfType<Backup>()
            .OrderByDescending(one => one.MadeAt)
            .ThenByDescending(one => one.Name, StringComparer.Ordinal)];

    /// <summary>The newest whose bytes are still those that were proven; none where there is none.</summary>
    /// <inheritdoc cref="All"/>
    public Backup? NewestGood() => All().FirstOrDefault(one => Proof.Sum(FileOf(one)) == one.Sha256);

    /// <summary>The file that is meant: a path, or a name in the folder; none where there is no such file.</summary>
    /// <param name="named">As typed; none: the newest backup.</param>
    public string? Find(string? named) => named is null
        ? All().Select(FileOf).FirstOrDefault()
        : File.Exists(named) ? named
        : Path.GetFileName(named) == named && Path.Combine(Folder, named) is var own && File.Exists(own) ? own
        : null;

    /// <summary>Copies the studio as it is at this moment, also while another program writes to it; proves the copy,
    /// and only then puts it under its name. Older ones that are no longer kept go.</summary>
    /// <exception cref="UnprovenBackupException">The copy did not stand its proof.</exception>
    /// <exception cref="BackupUnderWayException">Another one is being made.</exception>
    /// <exception cref="UnreadableStudioException">There is no studio, or it can't be read.</exception>
    /// <exception cref="NewerStudioException">It was written by a newer program.</exception>
    /// <exception cref="IOException">The disk says no.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written.</exception>
    public Backup Make(BackupKind kind, DateTimeOffset at)
    {
        try
        {
            using var reader = Connections.Reader(studio);
            SchemaSteps.RefuseNewer(reader);
            return Make(reader, kind, at);
        }
        catch (SqliteException why)
        {
            throw new UnreadableStudioException(why);
        }
    }

    /// <summary>The same through a connection to the studio that is there already.</summary>
    /// <exception cref="SqliteException">The studio can't be read, or the copy not be written.</exception>
    internal Backup Make(SqliteConnection source, BackupKind kind, DateTimeOffset at)
    {
        Directory.CreateDirectory(Folder);
        using var claim = Claimed();
        ForgetUnfinished();
        var made = Finished(source, kind, at);
        foreach (var old in Rotation.Gone(All(), made))
        {
            Forget(old);
        }

        Durable.FlushFolder(Folder);
        return made;
    }

    /// <summary>Lets a studio pass that is there, and one that never was.</summary>
    /// <exception cref="LostStudioException">It is gone, but not its backups.</exception>
    internal void RefuseLost()
    {
        if (File.Exists(studio) && new FileInfo(studio).Length > 0)
        {
            return;
        }

        if (All().Count > 0)
        {
            throw new LostStudioException(studio, Folder);
        }

        if (Directory.EnumerateFiles(Path.GetDirectoryName(studio)!, Path.GetFileName(Restoring.KeptAside(studio, "*")))
            .FirstOrDefault() is { } kept)
        {
            throw new LostStudioException(studio, kept);
        }
    }

    private string Stem => Path.GetFileNameWithoutExtension(studio);

    private FileClaim Claimed()
    {
        try
        {
            return FileClaim.On(Path.Combine(Folder, Stem));
        }
        catch (StudioInUseException taken)
        {
            throw new BackupUnderWayException(taken);
        }
    }

    // Half a copy goes at once: it may be what filled the disk.
    private Backup Finished(SqliteConnection source, BackupKind kind, DateTimeOffset at)
    {
        try
        {
            return Proven(source, FreeName(kind, at, SchemaSteps.VersionOf(source)), kind, at);
        }
        finally
        {
            ForgetUnfinished();
        }
    }

    private Backup Proven(SqliteConnection source, string name, BackupKind kind, DateTimeOffset at)
    {
        var copy = Path.Combine(Folder, name + Unfinished);
        var rows = Copied(source, copy);
        if (Proof.OfCopy(copy, rows) is [_, ..] findings)
        {
            throw new UnprovenBackupException(findings, Soundness.Of(source).Count > 0);
        }

        Durable.Flush(copy);
        var backup = new Backup(
            name,
            kind,
            DateTimeOffset.FromUnixTimeSeconds(at.ToUnixTimeSeconds()),
            SchemaSteps.VersionOf(source),
            new FileInfo(copy).Length,
            Proof.Sum(copy),
            rows);
        var manifest = Manifest.Beside(FileOf(backup));
        Manifest.Write(manifest + Unfinished, backup);
        File.Move(copy, FileOf(backup));
        File.Move(manifest + Unfinished, manifest);
        Durable.FlushFolder(Folder);
        return backup;
    }

    // One look at the source, so that what is counted is what is copied. The copy has no log of its own.
    private static IReadOnlyDictionary<string, long> Copied(SqliteConnection source, string copy)
    {
        using var snapshot = source.BeginTransaction(deferred: true);
        var rows = Proof.Rows(source);
        using var target = Connections.Empty(copy);
        source.BackupDatabase(target);
        Connections.WithoutLog(target);
        return rows;
    }

    private string FreeName(BackupKind kind, DateTimeOffset at, int version)
    {
        var stem = string.Create(
            CultureInfo.InvariantCulture,
            $"{Stem}-{at.UtcDateTime:yyyyMMdd'T'HHmmss'Z'}-{(kind == BackupKind.Upgrade ? $"before-upgrade-of-{version}"
                : kind == BackupKind.Daily ? "daily" : "asked")}");
        for (var turn = 1; ; turn++)
        {
            var name = turn == 1 ? $"{stem}.db" : string.Create(CultureInfo.InvariantCulture, $"{stem}-{turn}.db");
            if (!Path.Exists(Path.Combine(Folder, name)))
            {
                return name;
            }
        }
    }

    // What a crash left, and what lies beside it; nobody else makes one at this moment.
    private void ForgetUnfinished()
    {
        foreach (var left in Directory.EnumerateFiles(Folder, $"{Stem}-{AnyMoment}-*{Unfinished}*"))
        {
            File.Delete(left);
        }
    }

    // Its manifest first: what has none does not count.
    private void Forget(Backup old)
    {
        File.Delete(Manifest.Beside(FileOf(old)));
        File.Delete(FileOf(old));
    }
}
