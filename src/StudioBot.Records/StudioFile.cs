using System.Collections.Concurrent;
using System.Globalization;
using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Records.Backups;
using StudioBot.Records.Schema;

namespace StudioBot.Records;

/// <summary>One studio's file: one writer lane, and readers that never wait for it.</summary>
/// <remarks>Everything is synchronous: the file database answers on the thread that asks.</remarks>
public sealed class StudioFile : IDisposable
{
    /// <summary>How long a log is that is not worth the while, in bytes: 1 MiB.</summary>
    public const long SmallLog = 1 << 20;

    private static readonly TimeSpan LaneWait = TimeSpan.FromSeconds(30);
    private static readonly TimeSpan LongestStatement = TimeSpan.FromSeconds(30);

    private readonly WriterLane lane = new();
    private readonly ConcurrentBag<SqliteConnection> readers = [];
    private readonly SqliteConnection writer;
    private readonly FileClaim? claim;
    private readonly TimeSpan longest;

    // One for all transactions, one after the other: what it remembers holds until a row changes.
    private readonly StudioSession session;

    private StudioFile(SqliteConnection writer, FileClaim? claim, TimeSpan longest)
    {
        this.writer = writer;
        this.claim = claim;
        this.longest = longest;
        session = new StudioSession(writer);
        (writer as StudioConnection)?.CountChanges();
    }

    // Only a file can be read beside its writer; a studio in memory lives in the writer's connection.
    private bool IsFile => claim is not null;

    private long LogLength =>
        new FileInfo(writer.DataSource + "-wal") is { Exists: true, Length: var length } ? length : 0;

    /// <summary>Opens the studio in this file and keeps it from others; makes it, with its schema, where there never
    /// was one. One that an older program wrote is brought up to date, and backed up before that.</summary>
    /// <exception cref="StudioInUseException">Another program has it open.</exception>
    /// <exception cref="NewerStudioException">It was written by a newer program.</exception>
    /// <exception cref="LostStudioException">It is gone, but its backups are there.</exception>
    /// <exception cref="UnprovenBackupException">No good backup could be made before bringing it up to date, so it was
    /// left as it is.</exception>
    /// <exception cref="BackupUnderWayException">Another program is making that backup.</exception>
    /// <exception cref="IOException">The folder is missing, or the disk says no.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder or the file may not be written.</exception>
    /// <exception cref="UnreadableStudioException">The file is damaged, no studio, or can't be written.</exception>
    public static StudioFile Open(string path) => Open(path, LongestStatement);

    internal static StudioFile Open(string path, TimeSpan longest)
    {
        var claim = FileClaim.On(path);
        try
        {
            var backups = BackupFolder.Of(path);
            backups.RefuseLost();
            var written = LastWritten(path);
            return new StudioFile(
                Connections.Writer(path, older => backups.Make(older, BackupKind.Upgrade, written)), claim, longest);
        }
        catch (SqliteException why)
        {
            claim.Dispose();
            throw new UnreadableStudioException(why);
        }
        catch
        {
            claim.Dispose();
            throw;
        }
    }

    /// <summary>A studio that is gone when it is closed. Here a reader does wait for the writer.</summary>
    public static StudioFile OpenInMemory() => new(Connections.InMemory(), null, LongestStatement);

    /// <summary>Looks once at a studio that another program may have open, and makes nothing.</summary>
    /// <exception cref="NewerStudioException">It was written by a newer program.</exception>
    /// <exception cref="OlderStudioException">It was written by an older one and not opened since.</exception>
    /// <exception cref="UnreadableStudioException">There is no such file, or it is damaged.</exception>
    public static T Glance<T>(string path, Func<StudioView, T> look)
    {
        using var reader = Glanced(path);
        return ReadOn(reader, look);
    }

    // What is not yet in the file itself stands in the log beside it.
    private static DateTimeOffset LastWritten(string path) => new[] { path, path + "-wal" }
        .Select(file => new DateTimeOffset(File.GetLastWriteTimeUtc(file), TimeSpan.Zero))
        .Max();

    private static SqliteConnection Glanced(string path)
    {
        try
        {
            var reader = Connections.Reader(path);
            SchemaSteps.RefuseOther(reader);
            return reader;
        }
        catch (SqliteException why)
        {
            throw new UnreadableStudioException(why);
        }
    }

    /// <summary>Takes the lane and does all of this or, when it throws, nothing of it.</summary>
    /// <exception cref="InvalidOperationException">This thread already writes.</exception>
    /// <exception cref="TimeoutException">The lane stayed taken for 30 s.</exception>
    /// <exception cref="UnwritableStudioException">The disk takes nothing more.</exception>
    /// <exception cref="SqliteException">A statement was still running after 30 s and was broken off.</exception>
    public void Write(Action<StudioSession> work) => Write(session =>
    {
        work(session);
        return true;
    });

    /// <inheritdoc cref="Write(Action{StudioSession})"/>
    public T Write<T>(Func<StudioSession, T> work) => InLane(() =>
    {
        using var deadline = new Deadline(writer, longest);
        var stands = false;
        try
        {
            using var transaction = writer.BeginTransaction(deferred: false);
            (writer as StudioConnection)?.CountOthers();
            var result = work(session);
            transaction.Commit();
            stands = true;
            return result;
        }
        catch (SqliteException trouble) when (UnwritableStudioException.Is(trouble))
        {
            throw new UnwritableStudioException(trouble);
        }
        finally
        {
            if (!stands)
            {
                (writer as StudioConnection)?.CountTakenBack();
            }
        }
    });

    /// <summary>Writes the log beside the file back into it and empties it. A log of up to <see cref="SmallLog"/> is
    /// left as it is, and so is one that somebody reads from: nobody is waited for.</summary>
    /// <returns>Whether it is short now.</returns>
    /// <exception cref="InvalidOperationException">This thread is writing.</exception>
    /// <exception cref="TimeoutException">The lane stayed taken for 30 s.</exception>
    public bool ShortenLog() => !IsFile || LogLength <= SmallLog || InLane(() =>
    {
        Connections.ShortenLog(writer);
        return LogLength <= SmallLog;
    });

    /// <summary>Plays a disk with room for so many pages more, of 4 KiB each; none: as many as there are.</summary>
    internal void LeaveRoom(int? pages) => InLane(() =>
    {
        var most = pages is { } more ? writer.ExecuteScalar<long>("pragma page_count") + more : uint.MaxValue - 1;
        return writer.ExecuteScalar<long>(
            string.Create(CultureInfo.InvariantCulture, $"pragma max_page_count = {most}"));
    });

    /// <summary>Plays a disk that may only be read; or no more.</summary>
    internal void OnlyRead(bool only) =>
        InLane(() => writer.Execute(only ? "pragma query_only = 1" : "pragma query_only = 0"));

    /// <summary>Looks at the studio as it was at the last commit; nothing can be written on the way.</summary>
    /// <remarks>What is returned must be whole: the view ends with the call.</remarks>
    /// <exception cref="InvalidOperationException">This thread is writing: a session reads for itself.</exception>
    public T Read<T>(Func<StudioView, T> look)
    {
        RefuseInsideLane();
        return IsFile ? ReadBeside(look) : ReadInLane(look);
    }

    /// <summary>Closes the file and lets others have it. Nothing may be reading or writing any more.</summary>
    public void Dispose()
    {
        while (readers.TryTake(out var reader))
        {
            reader.Dispose();
        }

        writer.Dispose();
        claim?.Dispose();
    }

    private T ReadBeside<T>(Func<StudioView, T> look)
    {
        var reader = readers.TryTake(out var kept) ? kept : Connections.Reader(writer.DataSource);
        try
        {
            using var deadline = new Deadline(reader, longest);
            return ReadOn(reader, look);
        }
        finally
        {
            readers.Add(reader);
        }
    }

    private T ReadInLane<T>(Func<StudioView, T> look) => InLane(() =>
    {
        writer.Execute(Connections.LookOnly);
        try
        {
            return ReadOn(writer, look);
        }
        finally
        {
            writer.Execute(Connections.WriteToo);
        }
    });

    private static T ReadOn<T>(SqliteConnection connection, Func<StudioView, T> look)
    {
        using var snapshot = connection.BeginTransaction(deferred: true);
        return look(new StudioView(connection));
    }

    private T InLane<T>(Func<T> work)
    {
        RefuseInsideLane();
        if (!lane.Enter(LaneWait))
        {
            throw new TimeoutException($"The studio's writer lane stayed taken for {LaneWait.TotalSeconds} s.");
        }

        try
        {
            return work();
        }
        finally
        {
            lane.Leave();
        }
    }

    private void RefuseInsideLane()
    {
        if (lane.IsHeldByCurrentThread)
        {
            throw new InvalidOperationException("This thread already has the studio: use the session it was given.");
        }
    }
}
