using System.Text.Json;
using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Records.Members;

namespace StudioBot.Records.Acts;

/// <summary>Who wrote what when: everything booked hangs from one of these.</summary>
public sealed class ActRecords
{
    /// <summary>The kind of the act that opens a studio's books.</summary>
    public const string Opening = "opening";

    /// <summary>The kind of an act that takes another back.</summary>
    public const string Undoing = "undo";

    private const int MostListed = 10;

    // The kinds whose words, typed again at once, are more likely a slip than a second time.
    private static readonly HashSet<string> AskedAgain = ["used", "bought", "pour", "coat", "paid"];

    private static readonly TimeSpan AtOnce = TimeSpan.FromSeconds(60);
    private static readonly TimeSpan Lately = TimeSpan.FromDays(14);

    private readonly SqliteConnection connection;

    internal ActRecords(SqliteConnection connection) => this.connection = connection;

    private const string Written = """
        select act.id, act.kind, act.author_id as authorId, author.name as author, act.for_id as forId,
               other.name as "for", act.chat_id as chatId, act.message_id as messageId, act.words,
               act.happened_at as happenedAt, act.written_at as writtenAt, act.undoes_id as undoesId,
               answer.id as undoneById
        from act
        left join member as author on author.id = act.author_id
        left join member as other on other.id = act.for_id
        left join act as answer on answer.undoes_id = act.id

        """;

    private const string One = Written + "where act.id = $id";

    private const string OfThese = Written + """
        where act.id in (select value from json_each($ids))
        order by act.id
        """;

    private const string ByMessage = Written + """
        where act.chat_id = $chat
          and act.message_id in (select value from json_each($messages))
          and act.undoes_id is null
          and answer.id is null
        order by act.id
        """;

    private const string Since = """
        select act.id, act.words
        from act
        where act.author_id = $author
          and act.written_at >= $since
          and act.kind = $kind
          and not exists (select 1 from act as answer where answer.undoes_id = act.id)
        order by act.written_at desc, act.id desc
        """;

    private const string FirstSince = """
        select coalesce(min(id), (select coalesce(max(id), 0) + 1 from act))
        from act indexed by act_written
        where written_at >= $since
        """;

    /// <summary>The number of the first act that was written since; of the next one where none was.</summary>
    public long FirstWrittenSince(DateTimeOffset since) =>
        connection.ExecuteScalar<long>(FirstSince, new { since = Booked.At(since) });

    private const string Last = """
        select written_at
        from act
        order by id desc
        limit 1
        """;

    /// <summary>When the last act was written, whatever moments the ones before it bear; none where there is none.
    /// </summary>
    public DateTimeOffset? LastWrittenAt() => Booked.Moment(connection.ExecuteScalar<long?>(Last));

    private const string LastNumber = """
        select coalesce(max(id), 0)
        from act
        """;

    /// <summary>The number of the last act; 0 before the first. It grows with every record and every undo.</summary>
    public long LastId() => connection.ExecuteScalar<long>(LastNumber);

    private const string Newest = Written + """
        where act.author_id is not null
          and act.written_at >= $since
          and act.undoes_id is null
          and answer.id is null
        order by act.written_at desc, act.id desc
        limit $limit
        """;

    private const string NewestOf = Written + """
        where act.author_id = $author
          and ($chat is null
            or act.chat_id = $chat
            or act.chat_id in (select from_chat_id from chat_move where to_chat_id = $chat))
          and act.written_at >= $since
          and act.undoes_id is null
          and answer.id is null
        order by act.written_at desc, act.id desc
        limit $limit
        """;

    private const string Begun = """
        insert into act (
            kind, author_id, for_id, chat_id, message_id, words, happened_at, written_at, undoes_id)
        values ($kind, $author, $for, $chat, $message, $words, $happened, $written, $undoes)
        returning id
        """;

    /// <summary>Begins an act; what is booked next hangs from it.</summary>
    /// <exception cref="ArgumentException">It is an undo: those are begun by <see cref="Undo"/>.</exception>
    /// <exception cref="SqliteException">The kind or the words are empty, or the kind is longer than 20 characters.
    /// </exception>
    public Act Begin(NewAct act) => act.Kind == Undoing
        ? throw new ArgumentException("An undo is begun by what it undoes.", nameof(act))
        : Begin(act, undoes: null);

    /// <summary>The act of this number; none where there is none.</summary>
    public Act? Find(long id) => connection.QuerySingleOrDefault<Row>(One, new { id })?.From();

    /// <summary>What this author wrote in the same words within the last 60 s and still holds; only of the kinds used,
    /// bought, pour, coat and paid, where a second time is more likely a slip.</summary>
    public Act? SameAgain(Member author, string kind, string words, DateTimeOffset now)
    {
        if (!AskedAgain.Contains(kind))
        {
            return null;
        }

        var since = new { author = author.Id, kind, since = Booked.At(now - AtOnce) };
        return connection.Query<WordsRow>(Since, since)
            .FirstOrDefault(row => Alike(row.Words, words)) is { } same ? Find(same.Id) : null;
    }

    /// <summary>The last act of this author that holds and is no undo.</summary>
    public Act? LastOf(Member author) => ListOf(author, null, long.MinValue, 1).SingleOrDefault();

    /// <summary>The last ten acts of the last two weeks that hold and are no undo, the newest first.</summary>
    /// <param name="author">Whose; none: of all members.</param>
    /// <param name="now">From when the two weeks count back.</param>
    public IReadOnlyList<Act> Recent(Member? author, DateTimeOffset now)
    {
        var since = Booked.At(now - Lately);
        return author is null
            ? [.. connection.Query<Row>(Newest, new { since, limit = MostListed }).Select(row => row.From())]
            : ListOf(author, null, since, MostListed);
    }

    /// <summary>So of one author, as far as they were written in this chat.</summary>
    public IReadOnlyList<Act> RecentIn(long chatId, Member author, DateTimeOffset now) =>
        ListOf(author, chatId, Booked.At(now - Lately), MostListed);

    /// <summary>The acts of these numbers, in the order they were written; of an unknown number there is none.
    /// </summary>
    public IReadOnlyList<Act> These(IEnumerable<long> ids) =>
        [.. connection.Query<Row>(OfThese, new { ids = JsonSerializer.Serialize(ids) }).Select(row => row.From())];

    /// <summary>What these messages of a chat wrote that holds and is no undo, in the order it was written.</summary>
    public IReadOnlyList<Act> Of(long chatId, IEnumerable<long> messageIds) =>
    [
        .. connection.Query<Row>(ByMessage, new { chat = chatId, messages = JsonSerializer.Serialize(messageIds) })
            .Select(row => row.From()),
    ];

    internal Act Begin(NewAct act, long? undoes)
    {
        var id = connection.ExecuteScalar<long>(Begun, new
        {
            kind = act.Kind,
            author = act.Author?.Id,
            @for = act.For?.Id,
            chat = act.ChatId,
            message = act.MessageId,
            words = act.Words,
            happened = Booked.At(act.HappenedAt),
            written = Booked.At(act.WrittenAt),
            undoes,
        });
        return new Act(
            id,
            act.Kind,
            Named(act.Author),
            Named(act.For),
            act.ChatId,
            act.MessageId,
            act.Words,
            Booked.Moment(Booked.At(act.HappenedAt)),
            Booked.Moment(Booked.At(act.WrittenAt)),
            undoes,
            UndoneById: null);
    }

    private static ActMember? Named(Member? member) => member is null ? null : new ActMember(member.Id, member.Name);

    private IReadOnlyList<Act> ListOf(Member author, long? chat, long since, int limit) =>
        [.. connection.Query<Row>(NewestOf, new { author = author.Id, chat, since, limit }).Select(row => row.From())];

    private static bool Alike(string one, string other) =>
        Words(one).SequenceEqual(Words(other), StringComparer.OrdinalIgnoreCase);

    private static string[] Words(string line) =>
        line.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);

    private sealed record WordsRow(long Id, string Words);

    private sealed record Row(
        long Id,
        string Kind,
        long? AuthorId,
        string? Author,
        long? ForId,
        string? For,
        long? ChatId,
        long? MessageId,
        string Words,
        long HappenedAt,
        long WrittenAt,
        long? UndoesId,
        long? UndoneById)
    {
        public Act From() => new(
            Id,
            Kind,
            Named(AuthorId, Author),
            Named(ForId, For),
            ChatId,
            MessageId,
            Words,
            Booked.Moment(HappenedAt),
            Booked.Moment(WrittenAt),
            UndoesId,
            UndoneById);

        private static ActMember? Named(long? id, string? name) =>
            id is { } known && name is not null ? new ActMember(known, name) : null;
    }
}
