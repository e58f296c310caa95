namespace StudioBot.Records.Post;

/// <summary>The chats of which rows wait in a table, gone through from one to the next, whatever the backlog of each.
/// </summary>
internal static class WaitingChats
{
    /// <summary>Names them <c>chats (id)</c> for the statement that follows; the last one is null.</summary>
    /// <param name="table">One with an index on the chat where its state is waiting.</param>
    public static string In(string table) => $"""
        with recursive chats (id) as (
            select min(chat_id)
            from {table}
            where state = 'waiting'
            union all
            select (
                select min(next.chat_id)
                from {table} as next
                where next.state = 'waiting'
                  and next.chat_id > chats.id)
            from chats
            where chats.id is not null)
        """;
}
