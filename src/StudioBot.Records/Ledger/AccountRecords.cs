using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Craft.Costs;

namespace StudioBot.Records.Ledger;

/// <summary>One account of the money book, line by line; never the whole book.</summary>
public sealed class AccountRecords
{
    private readonly SqliteConnection connection;

    internal AccountRecords(SqliteConnection connection) => this.connection = connection;

    private const string Columns = """
        select act.id as actId, coalesce(undone.kind, act.kind) as kind, coalesce(undone.words, act.words) as words,
               coalesce(undone.for_id, undone.author_id, act.for_id, act.author_id) as whoseId,
               act.author_id as authorId, act.undoes_id is not null as isUndo, entry.cents,
               act.happened_at as happenedAt

        """;

    private const string NewestOf = Columns + """
        from money_entry as entry
        join act on act.id = entry.act_id
        left join act as undone on undone.id = act.undoes_id
        where entry.member_id = $member
        order by entry.id desc
        limit $limit
        """;

    /// <summary>The last lines of a member's account, the last that was booked first.</summary>
    public IReadOnlyList<AccountEntry> Newest(long memberId, int most) =>
        [.. connection.Query<Row>(NewestOf, new { member = memberId, limit = most }).Select(row => row.From())];

    private const string LinesOf = """
        select count(*)
        from money_entry
        where member_id = $member
        """;

    /// <summary>How many lines a member's account has.</summary>
    public int Count(long memberId) => connection.ExecuteScalar<int>(LinesOf, new { member = memberId });

    // The acts of a stretch of time are few among all lines of a member: they go first.
    private const string OfTime = Columns + """
        from act
        cross join money_entry as entry on entry.act_id = act.id
        left join act as undone on undone.id = act.undoes_id
        where act.happened_at >= $from
          and act.happened_at < $until
          and entry.account = $account
          and entry.member_id is $member
        order by entry.id desc
        """;

    /// <summary>The lines of a member's account about a stretch of time, the last that was booked first.</summary>
    /// <param name="memberId">Whose.</param>
    /// <param name="from">Its first moment.</param>
    /// <param name="until">The first after it.</param>
    public IReadOnlyList<AccountEntry> Within(long memberId, DateTimeOffset from, DateTimeOffset until) =>
        Listed("member", memberId, from, until);

    /// <summary>So the lines of the kitty: below zero is what came in.</summary>
    public IReadOnlyList<AccountEntry> OfKitty(DateTimeOffset from, DateTimeOffset until) =>
        Listed("kitty", null, from, until);

    private IReadOnlyList<AccountEntry> Listed(
        string account, long? member, DateTimeOffset from, DateTimeOffset until) =>
        [.. connection.Query<Row>(OfTime, new { account, member, from = Booked.At(from), until = Booked.At(until) })
            .Select(row => row.From())];

    // Settable, not positional: what is computed has no declared type for a constructor to be matched by.
    private sealed record Row
    {
        public long ActId { get; init; }

        public string Kind { get; init; } = string.Empty;

        public string Words { get; init; } = string.Empty;

        public long? WhoseId { get; init; }

        public long? AuthorId { get; init; }

        public bool IsUndo { get; init; }

        public long Cents { get; init; }

        public long HappenedAt { get; init; }

        public AccountEntry From() =>
            new(ActId, Kind, Words, WhoseId, IsUndo, new Money(Cents), Booked.Moment(HappenedAt))
            {
                AuthorId = AuthorId,
            };
    }
}
