using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Craft.Costs;
using StudioBot.Records.Acts;

namespace StudioBot.Records.Ledger;

/// <summary>Who owes whom: a book that is only appended, and all of it is always zero.</summary>
public sealed class MoneyRecords
{
    private readonly SqliteConnection connection;

    internal MoneyRecords(SqliteConnection connection) => this.connection = connection;

    private const string NewEntry = """
        insert into money_entry (act_id, account, member_id, cents)
        values ($act, $account, $member, $cents)
        """;

    /// <summary>Books what an act moves; what one account gains, another gives.</summary>
    /// <exception cref="ArgumentException">The lines do not add up to zero.</exception>
    /// <exception cref="SqliteException">A line is zero.</exception>
    public void Book(Act act, IReadOnlyList<MoneyLine> lines)
    {
        if (lines.Sum(line => line.Sum.Cents) != 0)
        {
            throw new ArgumentException("What is booked adds up to zero.", nameof(lines));
        }

        connection.Execute(NewEntry, lines.Select(line => new
        {
            act = act.Id,
            account = Word(line.Account),
            member = (line.Account as Account.OfMember)?.MemberId,
            cents = line.Sum.Cents,
        }));
    }

    private const string Sums = """
        select account, nullif(member_id, 0) as memberId, cents
        from money_sum
        where cents <> 0
        order by account, member_id
        """;

    /// <summary>How every account stands that does not stand at zero.</summary>
    public IReadOnlyList<MoneyLine> Balances() =>
        [.. connection.Query<SumRow>(Sums).Select(row =>
            new MoneyLine(Named(row.Account, row.MemberId), new Money(row.Cents)))];

    private const string Lines = """
        select entry.act_id as actId, entry.account, entry.member_id as memberId, entry.cents,
               act.happened_at as happenedAt
        from money_entry as entry
        join act on act.id = entry.act_id
        where $act is null or entry.act_id = $act
        order by entry.id
        """;

    /// <summary>The lines of the book, in the order they were booked; an undone line is followed by its opposite.
    /// </summary>
    public IReadOnlyList<MoneyEntry> Entries() => Listed(null);

    /// <summary>The lines of one act.</summary>
    public IReadOnlyList<MoneyEntry> Of(Act act) => Listed(act.Id);

    private IReadOnlyList<MoneyEntry> Listed(long? act) =>
        [.. connection.Query<LineRow>(Lines, new { act }).Select(row => row.From())];

    private static string Word(Account account) => account switch
    {
        Account.OfMember => "member",
        Account.OfKitty => "kitty",
        _ => "studio",
    };

    private static Account Named(string account, long? member) => (account, member) switch
    {
        ("member", { } id) => new Account.OfMember(id),
        ("kitty", _) => new Account.OfKitty(),
        _ => new Account.OfStudio(),
    };

    private sealed record LineRow(long ActId, string Account, long? MemberId, long Cents, long HappenedAt)
    {
        public MoneyEntry From() => new(
            ActId, Named(Account, MemberId), new Money(Cents), Booked.Moment(HappenedAt));
    }

    // Settable, not positional: a sum has no declared type for a constructor to be matched by.
    private sealed record SumRow
    {
        public string Account { get; init; } = string.Empty;

        public long? MemberId { get; init; }

        public long Cents { get; init; }
    }
}
