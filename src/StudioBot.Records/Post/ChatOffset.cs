using Dapper;
using Microsoft.Data.Sqlite;

namespace StudioBot.Records.Post;

/// <summary>From which update on the chat service is asked; moved in the transaction that stores the updates.</summary>
public sealed class ChatOffset
{
    private readonly SqliteConnection connection;

    internal ChatOffset(SqliteConnection connection) => this.connection = connection;

    private const string Kept = """
        select next_update_id
        from chat_offset
        """;

    /// <summary>The next update to ask for; none before the first fetch.</summary>
    public long? Next() => connection.QuerySingleOrDefault<long?>(Kept);

    private const string Keep = """
        insert into chat_offset (id, next_update_id)
        values (1, $next)
        on conflict (id) do update
        set next_update_id = $next
        """;

    /// <summary>The next fetch starts here; lower than before is right too: the service may start its numbers anew.
    /// </summary>
    public void Move(long next) => connection.Execute(Keep, new { next });
}
