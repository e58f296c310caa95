using System.Text.Json;
using Dapper;
using Microsoft.Data.Sqlite;

namespace StudioBot.Records.Post;

/// <summary>What goes to the chat service: put in the transaction that causes it, sent afterwards, one at a time in a
/// chat and in order.</summary>
public sealed class Outbox
{
    private readonly SqliteConnection connection;

    internal Outbox(SqliteConnection connection) => this.connection = connection;

    /// <summary>How long a sent or parked post is kept.</summary>
    public static TimeSpan Kept { get; } = TimeSpan.FromDays(8);

    // No service asks for more.
    private static readonly TimeSpan LongestRest = TimeSpan.FromHours(1);

    private const string PutOne = """
        insert into post (chat_id, once_key, urgency, payload, put_at, next_try_at)
        values (
            coalesce((select to_chat_id from chat_move where from_chat_id = $chat), $chat),
            $once, $urgency, $payload, $at, $at)
        on conflict (once_key) do nothing
        returning id
        """;

    private const string PutFile = """
        insert into post_file (post_id, name, media_type, content)
        values ($post, $name, $type, $content)
        """;

    /// <summary>Puts a message, to be sent once this transaction is committed.</summary>
    /// <param name="chatId">To which chat; one that has another number by now is followed.</param>
    /// <param name="payload">What to send, JSON.</param>
    /// <param name="urgency">Which goes first.</param>
    /// <param name="at">When.</param>
    /// <param name="onceKey">What this says, where it must not be said twice within eight days.</param>
    /// <param name="file">What goes out with it; none: words alone.</param>
    /// <returns>Whether it was put: not when this was said before.</returns>
    /// <exception cref="SqliteException">The payload is no JSON, or the file is empty.</exception>
    public bool Put(
        long chatId,
        string payload,
        Urgency urgency,
        DateTimeOffset at,
        string? onceKey = null,
        PostFile? file = null)
    {
        var id = connection.ExecuteScalar<long?>(PutOne, new
        {
            chat = chatId,
            once = onceKey,
            urgency = (int)urgency,
            payload,
            at = Booked.At(at),
        });
        if (id is { } post && file is not null)
        {
            connection.Execute(
                PutFile, new { post, name = file.Name, type = file.MediaType, content = file.Content });
        }

        return id is not null;
    }

    private const string FileOfPost = """
        select name, media_type as mediaType, content
        from post_file
        where post_id = $post
        """;

    /// <summary>The file that goes out with a post; none where none does.</summary>
    public PostFile? FileOf(long postId) =>
        connection.QuerySingleOrDefault<PostFile>(FileOfPost, new { post = postId });

    private const string PutUnder = """
        select payload, sent_message_id as messageId, settled_at is not null as isSettled
        from post
        where once_key = $once
        """;

    /// <summary>What was put under this key, and as which message it arrived; none where nothing was.</summary>
    public PostOnce? PutOnce(string onceKey) =>
        connection.QuerySingleOrDefault<OnceRow>(PutUnder, new { once = onceKey })?.From();

    // A chat rests as a whole: while one of its posts is on the wire, and while one waits for its next try.
    internal static readonly string ClaimHeads = WaitingChats.In("post") + """

        update post
        set state = 'sending', tries = tries + 1
        where id in (
            select head.id
            from chats
            join post as head on head.id = (
                select first.id
                from post as first
                where first.state = 'waiting' and first.chat_id = chats.id
                order by first.urgency, first.id
                limit 1)
            where chats.id not in (select value from json_each($resting))
              and not exists (
                select 1 from post as flying
                where flying.state = 'sending' and flying.chat_id = chats.id)
              and not exists (
                select 1 from post as later
                where later.state = 'waiting' and later.next_try_at > later.put_at
                  and later.chat_id = chats.id and later.next_try_at > $now)
            order by head.urgency, head.id
            limit $most)
        returning id, chat_id as chatId, urgency, payload, put_at as putAt, tries, maybe_sent as maybeSent
        """;

    /// <summary>Claims the posts that may be sent now, one a chat: the most urgent, and among those the oldest.
    /// </summary>
    /// <param name="now">The moment of asking.</param>
    /// <param name="most">So many at most.</param>
    /// <param name="restingChats">Chats that the sender's own pace leaves alone for now.</param>
    /// <returns>The posts in that order, which nobody else gets until they are sent, put off or freed.</returns>
    public IReadOnlyList<Post> Claim(DateTimeOffset now, int most, IEnumerable<long> restingChats) =>
        [.. connection.Query<Row>(ClaimHeads, new
        {
            now = Booked.At(now),
            most,
            resting = JsonSerializer.Serialize(restingChats),
        }).OrderBy(row => row.Urgency).ThenBy(row => row.Id).Select(row => row.From())];

    /// <summary>Claims the next post that may be sent now.</summary>
    /// <returns>The post; none where all rest.</returns>
    public Post? Claim(DateTimeOffset now, params IEnumerable<long> restingChats) =>
        Claim(now, 1, restingChats).SingleOrDefault();

    private const string ClaimHere = """
        update post
        set state = 'sending', tries = tries + 1
        where state = 'waiting'
          and id = (
            select head.id
            from post as head
            where head.state = 'waiting' and head.chat_id = $chat
            order by head.urgency, head.id
            limit 1)
        returning id, chat_id as chatId, urgency, payload, put_at as putAt, tries, maybe_sent as maybeSent
        """;

    /// <summary>Claims the next post for this chat only, where somebody shows it themselves.</summary>
    /// <returns>The post; none where none waits.</returns>
    public Post? ClaimFor(long chatId) =>
        connection.QuerySingleOrDefault<Row>(ClaimHere, new { chat = chatId })?.From();

    private static readonly string NextMoment = WaitingChats.In("post") + """

        select min(coalesce(
            (
                select max(later.next_try_at)
                from post as later
                where later.state = 'waiting' and later.next_try_at > later.put_at and later.chat_id = chats.id),
            (
                select first.next_try_at
                from post as first
                where first.state = 'waiting' and first.chat_id = chats.id
                order by first.urgency, first.id
                limit 1)))
        from chats
        where chats.id is not null
        """;

    /// <summary>When the next chat with post waiting stops resting; none where nothing waits.</summary>
    public DateTimeOffset? NextTryAt() => Booked.Moment(connection.QuerySingleOrDefault<long?>(NextMoment));

    private const string SentOne = """
        update post
        set state = 'sent', settled_at = $at, sent_message_id = $message
        where id = $id
          and state = 'sending'
        """;

    /// <summary>It has arrived, as this message of the service where it says so.</summary>
    /// <exception cref="InvalidOperationException">The post was not claimed.</exception>
    public void Sent(long id, DateTimeOffset at, long? messageId = null) =>
        One(connection.Execute(SentOne, new { id, at = Booked.At(at), message = messageId }), id);

    private const string PutOff = """
        update post
        set state = 'waiting', next_try_at = $next, trouble = $why, maybe_sent = max(maybe_sent, $maybe)
        where id = $id
          and state = 'sending'
        """;

    /// <summary>It did not go, or nobody knows; its chat rests until then.</summary>
    /// <param name="id">Which post.</param>
    /// <param name="nextTry">Not before this moment.</param>
    /// <param name="why">What came back, in one line.</param>
    /// <param name="maybeSent">It may have arrived all the same.</param>
    /// <exception cref="InvalidOperationException">The post was not claimed.</exception>
    public void Again(long id, DateTimeOffset nextTry, string why, bool maybeSent = false) => One(
        connection.Execute(PutOff, new { id, next = Booked.At(nextTry), why, maybe = maybeSent ? 1 : 0 }), id);

    private const string ParkOne = """
        update post
        set state = 'parked', settled_at = $at, trouble = $why
        where id = $id
          and state = 'sending'
        """;

    /// <summary>It will never go.</summary>
    /// <exception cref="InvalidOperationException">The post was not claimed.</exception>
    public void Park(long id, DateTimeOffset at, string why) =>
        One(connection.Execute(ParkOne, new { id, at = Booked.At(at), why }), id);

    private const string ParkWaiting = """
        update post
        set state = 'parked', settled_at = $at, trouble = $why
        where chat_id = $chat
          and state = 'waiting'
        """;

    /// <summary>Nothing will reach this chat any more: parks all that waits for it.</summary>
    /// <returns>How many posts that were.</returns>
    public int ParkChat(long chatId, DateTimeOffset at, string why) =>
        connection.Execute(ParkWaiting, new { chat = chatId, at = Booked.At(at), why });

    private const string Free = """
        update post
        set state = 'waiting', maybe_sent = 1
        where state = 'sending'
        """;

    /// <summary>At start nobody is sending, so every claim is void; what was claimed may have arrived.</summary>
    /// <returns>How many posts wait again.</returns>
    public int FreeAll() => connection.Execute(Free);

    private const string Follow = """
        update post
        set put_at = put_at + $by, next_try_at = next_try_at + $by
        where state in ('waiting', 'sending')
        """;

    /// <summary>The clock was set by so much: what waits is no older for it, and rests no longer or shorter.</summary>
    public void ClockSet(TimeSpan by) => connection.Execute(Follow, new { by = (long)by.TotalMilliseconds });

    private const string Recover = """
        update post
        set put_at = min(put_at, $now), next_try_at = $now
        where state = 'waiting'
          and (put_at > $now or next_try_at > $furthest)
        """;

    /// <summary>Where nobody knows what went by which clock, as at the start: what was put later than now, or rests
    /// for over an hour, goes at once.</summary>
    public void ClockMayBeSet(DateTimeOffset now) => connection.Execute(
        Recover, new { now = Booked.At(now), furthest = Booked.At(now + LongestRest) });

    private const string Forget = """
        delete from post
        where settled_at is not null
          and settled_at < $before
        """;

    /// <summary>Forgets what was settled more than eight days ago.</summary>
    /// <returns>How many rows went.</returns>
    public int Prune(DateTimeOffset now) => connection.Execute(Forget, new { before = Booked.At(now - Kept) });

    private static void One(int changed, long id)
    {
        if (changed != 1)
        {
            throw new InvalidOperationException($"Post {id} is not being sent.");
        }
    }

    private sealed record OnceRow(string Payload, long? MessageId, long IsSettled)
    {
        public PostOnce From() => new(Payload, MessageId, IsSettled == 1);
    }

    private sealed record Row(
        long Id, long ChatId, long Urgency, string Payload, long PutAt, long Tries, long MaybeSent)
    {
        public Post From() =>
            new(Id, ChatId, Payload, Booked.Moment(PutAt), checked((int)Tries), MaybeSent == 1);
    }
}
