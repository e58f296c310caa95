using Dapper;
using Microsoft.Data.Sqlite;

namespace StudioBot.Records.Members;

/// <summary>Every command and press that was refused: who, what and why. It is only appended.</summary>
public sealed class RefusalRecords
{
    /// <summary>So many are written of one account in a day; who tries on is not worth the room.</summary>
    public const int MostInADay = 100;

    private const int LongestName = 40;
    private const int LongestWords = 80;

    private static readonly StoredWords<Standing> Standings = new(
        (Standing.Stranger, "stranger"),
        (Standing.Left, "left"),
        (Standing.Anonymous, "anonymous"),
        (Standing.Channel, "channel"),
        (Standing.Member, "member"),
        (Standing.Steward, "steward"));

    private readonly SqliteConnection connection;

    internal RefusalRecords(SqliteConnection connection) => this.connection = connection;

    /// <summary>How long one is kept.</summary>
    public static TimeSpan Kept { get; } = TimeSpan.FromDays(400);

    private const string PutOne = """
        insert into refusal (user_id, standing, name, words, why, refused_at)
        select $user, $standing, $name, $words, $why, $at
        where (
            select count(*)
            from refusal
            where user_id = $user
              and refused_at > $since) < $most
        """;

    /// <summary>Something was refused; name and words are cut where they are long.</summary>
    /// <returns>Whether it was written: not where this account has a hundred of this day already.</returns>
    public bool Put(Refused refused) => connection.Execute(PutOne, new
    {
        user = refused.UserId,
        standing = Standings.Of(refused.Standing),
        name = Cut(refused.Name, LongestName),
        words = Cut(refused.Words, LongestWords),
        why = refused.Why,
        at = Booked.At(refused.At),
        since = Booked.At(refused.At - TimeSpan.FromDays(1)),
        most = MostInADay,
    }) > 0;

    private const string Newest = """
        select user_id as userId, standing, name, words, why, refused_at as refusedAt
        from refusal
        order by refused_at desc, id desc
        limit $limit
        """;

    /// <summary>The last ones, the newest first.</summary>
    public IReadOnlyList<Refused> Last(int limit) =>
        [.. connection.Query<Row>(Newest, new { limit }).Select(row => row.From())];

    private const string Forget = """
        delete from refusal
        where refused_at < $before
        """;

    /// <summary>Forgets what was refused more than 400 days ago.</summary>
    /// <returns>How many went.</returns>
    public int Prune(DateTimeOffset now) => connection.Execute(Forget, new { before = Booked.At(now - Kept) });

    // Never between the two halves of one character.
    private static string Cut(string words, int longest) => words.Length <= longest ? words
        : words[..(char.IsHighSurrogate(words[longest - 2]) ? longest - 2 : longest - 1)] + "…";

    private sealed record Row(long UserId, string Standing, string Name, string Words, string Why, long RefusedAt)
    {
        public Refused From() =>
            new(UserId, Standings.Read(Standing), Name, Words, Why, Booked.Moment(RefusedAt));
    }
}
