using Dapper;
using Microsoft.Data.Sqlite;

namespace StudioBot.Records.Post;

/// <summary>What came from the chat service: each event once, however often and under whatever number it comes.
/// </summary>
public sealed class Inbox
{
    /// <summary>After so many tries that broke, a row is parked.</summary>
    public const int MostTries = 3;

    private readonly SqliteConnection connection;

    internal Inbox(SqliteConnection connection) => this.connection = connection;

    /// <summary>How long a settled row is kept to know its event again; after a silent week the service starts its
    /// numbers anew.</summary>
    public static TimeSpan Kept { get; } = TimeSpan.FromDays(8);

    private const string Came = """
        insert into inbox (update_id, chat_id, message_id, press_id, kind, raw, received_at)
        values ($update, $chat, $message, $press, $kind, $raw, $at)
        on conflict do nothing
        """;

    // Rows number themselves from 1 and the service never goes below: a number less than nothing is nobody's.
    private const string MakeRoom = """
        update inbox
        set update_id = -id
        where update_id = $update
          and (chat_id <> $chat or kind <> $kind or message_id is not $message or press_id is not $press)
        """;

    /// <summary>Stores an update, readable or not, unless its event is here already.</summary>
    /// <remarks>A number that the service gave to another event before it started anew is taken from that one.
    /// </remarks>
    /// <returns>Whether it was new.</returns>
    public bool Store(Incoming update, DateTimeOffset at)
    {
        var came = new
        {
            update = update.UpdateId,
            chat = update.ChatId,
            message = update.MessageId,
            press = update.PressId,
            kind = update.Kind,
            raw = update.Raw,
            at = Booked.At(at),
        };
        connection.Execute(MakeRoom, came);
        return connection.Execute(Came, came) > 0;
    }

    internal static readonly string Heads = WaitingChats.In("inbox") + """

        select inbox.id, inbox.chat_id as chatId, inbox.kind, inbox.raw, inbox.received_at as receivedAt, inbox.tries
        from inbox
        where inbox.id in (
            select (
                select min(head.id)
                from inbox as head
                where head.state = 'waiting'
                  and head.chat_id = chats.id)
            from chats)
        order by inbox.id
        limit $limit
        """;

    /// <summary>The first waiting row of each chat, in order of arrival: no later one may be answered before it.
    /// </summary>
    public IReadOnlyList<InboxRow> Next(int limit = 100) =>
        [.. connection.Query<Row>(Heads, new { limit }).Select(row => row.From())];

    private const string Settle = """
        update inbox
        set state = 'done', settled_at = $at
        where id = $id
          and state = 'waiting'
        """;

    /// <summary>This row is answered: written in the transaction that holds what it caused.</summary>
    /// <exception cref="InvalidOperationException">It was settled before: its effect must not stand twice.</exception>
    public void Done(long id, DateTimeOffset at)
    {
        if (connection.Execute(Settle, new { id, at = Booked.At(at) }) == 0)
        {
            throw new InvalidOperationException($"Inbox row {id} does not wait any more.");
        }
    }

    private const string Count = """
        update inbox
        set tries = tries + 1,
            trouble = $trouble,
            state = case when tries + 1 >= $most then 'parked' else state end,
            settled_at = case when tries + 1 >= $most then $at end
        where id = $id
          and state = 'waiting'
        returning state
        """;

    /// <summary>Answering this row broke: counts the try, and parks the row with the third.</summary>
    /// <param name="id">Which row.</param>
    /// <param name="trouble">What broke, in one line, with its mark.</param>
    /// <param name="at">When.</param>
    /// <returns>Whether it is parked now, which a steward should hear.</returns>
    public bool Broke(long id, string trouble, DateTimeOffset at) =>
        connection.QuerySingleOrDefault<string>(Count, new { id, trouble, at = Booked.At(at), most = MostTries })
            == "parked";

    private const string Parked = """
        select id, chat_id as chatId, kind, raw, received_at as receivedAt, tries
        from inbox
        where state = 'parked'
        order by id
        """;

    /// <summary>What could not be answered.</summary>
    public IReadOnlyList<InboxRow> AllParked() => [.. connection.Query<Row>(Parked).Select(row => row.From())];

    private const string Forget = """
        delete from inbox
        where received_at < $before
          and state in ('done', 'parked')
        """;

    /// <summary>Forgets what was received more than eight days ago and is settled; what waits stays.</summary>
    /// <returns>How many rows went.</returns>
    public int Prune(DateTimeOffset now) => connection.Execute(Forget, new { before = Booked.At(now - Kept) });

    private sealed record Row(long Id, long ChatId, string Kind, string Raw, long ReceivedAt, long Tries)
    {
        public InboxRow From() => new(Id, ChatId, Kind, Raw, Booked.Moment(ReceivedAt), checked((int)Tries));
    }
}
