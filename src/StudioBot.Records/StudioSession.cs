using Dapper;
using Microsoft.Data.Sqlite;
using SQLitePCL;
using StudioBot.Records.Acts;
using StudioBot.Records.Members;
using StudioBot.Records.Post;

namespace StudioBot.Records;

/// <summary>One transaction on the studio: all that is written through it stands together or not at all.</summary>
public sealed class StudioSession : StudioView
{
    private const string TakeBack = "rollback to attempt; release attempt";

    private readonly SqliteConnection connection;

    internal StudioSession(SqliteConnection connection)
        : base(connection)
    {
        this.connection = connection;
        Undo = new Undo(connection, Acts);
        Invitations = new Invitations(connection);
        Claim = new ClaimCode(connection);
        Strangers = new Strangers(connection);
        Inbox = new Inbox(connection);
        Offset = new ChatOffset(connection);
        Post = new Outbox(connection);
        Presses = new Presses(connection);
        Moves = new ChatMoves(connection);
    }

    /// <summary>Takes back what was recorded.</summary>
    public Undo Undo { get; }

    /// <summary>By which others come in.</summary>
    public Invitations Invitations { get; }

    /// <summary>By which the first steward comes in.</summary>
    public ClaimCode Claim { get; }

    /// <summary>Who is none of the studio's.</summary>
    public Strangers Strangers { get; }

    /// <summary>What came from the chat service.</summary>
    public Inbox Inbox { get; }

    /// <summary>From where on the chat service is asked.</summary>
    public ChatOffset Offset { get; }

    /// <summary>What goes to the chat service.</summary>
    public Outbox Post { get; }

    /// <summary>What stands behind the buttons.</summary>
    public Presses Presses { get; }

    /// <summary>Which chats have another number now.</summary>
    public ChatMoves Moves { get; }

    /// <summary>Does this and keeps it, or takes back all it wrote; what was written before stays either way.</summary>
    /// <param name="work">What is done.</param>
    /// <param name="keeps">Whether its result is worth keeping.</param>
    /// <exception cref="UnwritableStudioException">The disk takes nothing more, and nothing of the session stands.
    /// </exception>
    /// <exception cref="LostSessionException">The database has taken back the whole session.</exception>
    public T Attempt<T>(Func<T> work, Func<T, bool> keeps)
    {
        connection.Execute("savepoint attempt");
        try
        {
            var result = work();
            if (keeps(result))
            {
                connection.Execute("release attempt");
            }
            else
            {
                Return();
            }

            return result;
        }
        catch (SqliteException trouble) when (UnwritableStudioException.Is(trouble))
        {
            // A full disk has taken back the whole transaction, and the savepoint with it.
            throw new UnwritableStudioException(trouble);
        }
        catch (Exception told) when (told is UnwritableStudioException or LostSessionException)
        {
            // By an attempt within this one.
            throw;
        }
        catch (Exception broken)
        {
            if (IsOver)
            {
                throw new LostSessionException(broken);
            }

            Return();
            throw;
        }
    }

    /// <summary>Does this, or takes back all it wrote; what was written before stays either way.</summary>
    /// <exception cref="UnwritableStudioException">The disk takes nothing more, and nothing of the session stands.
    /// </exception>
    /// <exception cref="LostSessionException">The database has taken back the whole session.</exception>
    public void Attempt(Action work) => Attempt(
        () =>
        {
            work();
            return true;
        },
        _ => true);

    // A statement that was broken off in its writing takes the whole transaction with it.
    private bool IsOver => connection.Handle is { } handle && raw.sqlite3_get_autocommit(handle) != 0;

    private void Return()
    {
        connection.Execute(TakeBack);
        (connection as StudioConnection)?.CountTakenBack();
    }
}
