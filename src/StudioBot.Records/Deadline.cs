using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace StudioBot.Records;

/// <summary>Breaks off what a connection is doing after a while, so that one hung statement does not hang the house.
/// </summary>
internal sealed class Deadline : IDisposable
{
    private readonly Lock turn = new();
    private readonly SqliteConnection connection;
    private readonly Timer timer;
    private bool isOver;

    /// <summary>From now on so long.</summary>
    public Deadline(SqliteConnection connection, TimeSpan longest)
    {
        this.connection = connection;
        timer = new Timer(_ => Break(), null, longest, Timeout.InfiniteTimeSpan);
    }

    /// <summary>It was done in time; nothing is broken off any more.</summary>
    public void Dispose()
    {
        lock (turn)
        {
            isOver = true;
        }

        timer.Dispose();
    }

    private void Break()
    {
        lock (turn)
        {
            if (!isOver)
            {
                raw.sqlite3_interrupt(connection.Handle);
            }
        }
    }
}
