using Dapper;
using Microsoft.Data.Sqlite;

namespace StudioBot.Records.Post;

/// <summary>Groups that have another number than they had: what was kept under the old one follows.</summary>
public sealed class ChatMoves
{
    private readonly SqliteConnection connection;
    private readonly Remembered<Dictionary<long, long>> moved;

    internal ChatMoves(SqliteConnection connection)
    {
        this.connection = connection;
        moved = new(connection, ["chat_move"], () =>
            connection.Query<Moved>(All).ToDictionary(row => row.FromChatId, row => row.ToChatId));
    }

    private const string All = """
        select from_chat_id as fromChatId, to_chat_id as toChatId
        from chat_move
        """;

    /// <summary>The number this chat has now: its own, unless it moved.</summary>
    public long Now(long chatId) => moved.Value.GetValueOrDefault(chatId, chatId);

    private const string Follow = """
        delete from chat_move
        where from_chat_id = $to;
        update chat_move
        set to_chat_id = $to
        where to_chat_id = $from;
        insert into chat_move (from_chat_id, to_chat_id)
        values ($from, $to)
        on conflict (from_chat_id) do update
        set to_chat_id = $to;
        update reminder
        set chat_id = $to
        where chat_id = $from
          and state <> 'done';
        update press
        set chat_id = $to
        where chat_id = $from;
        update post
        set sent_message_id = null
        where chat_id = $from
        """;

    private const string Waiting = """
        select id, payload
        from post
        where chat_id = $from
          and state = 'waiting'
        order by id
        """;

    private const string Readdress = """
        update post
        set chat_id = $to, payload = $payload, next_try_at = min(next_try_at, $now)
        where id = $id
        """;

    /// <summary>This chat has another number from now on: reminders, buttons and posts that wait follow it. What was
    /// sent is found no more by its message, whose number means nothing there.</summary>
    /// <param name="from">The number it had.</param>
    /// <param name="to">The one it has.</param>
    /// <param name="now">When that was learnt: what waited for another try goes at once.</param>
    /// <param name="readdressed">A post's payload as it is sent elsewhere, without what only the old chat
    /// knows.</param>
    /// <returns>Whether that was news.</returns>
    public bool Move(long from, long to, DateTimeOffset now, Func<string, string> readdressed)
    {
        var isNews = from != to && Now(from) != to;
        if (isNews)
        {
            connection.Execute(Follow, new { from, to });
        }

        // Also when it is no news: one may have been on the wire to the old number when it was.
        foreach (var post in connection.Query<Row>(Waiting, new { from }).AsList())
        {
            connection.Execute(
                Readdress, new { id = post.Id, to, payload = readdressed(post.Payload), now = Booked.At(now) });
        }

        return isNews;
    }

    private sealed record Row(long Id, string Payload);

    private sealed record Moved(long FromChatId, long ToChatId);
}
