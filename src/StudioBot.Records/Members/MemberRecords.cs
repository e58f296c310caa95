using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Craft.Units;

namespace StudioBot.Records.Members;

/// <summary>Who belongs to the studio, and by which accounts the chat service knows them.</summary>
public sealed class MemberRecords
{
    private static readonly StoredWords<Role> Roles = new((Role.Member, "member"), (Role.Steward, "steward"));

    private readonly SqliteConnection connection;

    internal MemberRecords(SqliteConnection connection) => this.connection = connection;

    private const string Here = """
        select id, name, role, units
        from member
        where left_at is null
        order by id
        """;

    /// <summary>All who have not left, in the order they came.</summary>
    public IReadOnlyList<Member> All() => [.. connection.Query<Row>(Here).Select(row => row.From())];

    private const string Behind = """
        select member.id, member.name, member.role, member.units
        from account
        join member on member.id = account.member_id
        where account.user_id = $user
          and member.left_at is null
        """;

    /// <summary>Whose account this is; none for a stranger and for who has left.</summary>
    public Member? ByAccount(long userId) =>
        connection.QuerySingleOrDefault<Row>(Behind, new { user = userId })?.From();

    private const string Join = """
        insert into member (name, role, units, joined_at)
        values ($name, $role, $units, $at)
        returning id
        """;

    /// <summary>Somebody joins.</summary>
    /// <exception cref="SqliteException">The name is taken, empty or longer than 40 characters.</exception>
    public Member Add(string name, Role role, DateTimeOffset at, UnitSystem? units = null)
    {
        var id = connection.ExecuteScalar<long>(Join, new
        {
            name,
            role = Roles.Of(role),
            units = units is { } own ? StoredWords.Units.Of(own) : null,
            at = Booked.At(at),
        });
        return new Member(id, name, role, units);
    }

    private const string Know = """
        insert into account (user_id, member_id, added_at)
        values ($user, $member, $at)
        """;

    /// <summary>From now on this account of the chat service speaks for this member.</summary>
    /// <exception cref="SqliteException">The account already speaks for somebody.</exception>
    public void AddAccount(long userId, long memberId, DateTimeOffset at) =>
        connection.Execute(Know, new { user = userId, member = memberId, at = Booked.At(at) });

    private sealed record Row(long Id, string Name, string Role, string? Units)
    {
        public Member From() =>
            new(Id, Name, Roles.Read(Role), Units is { } own ? StoredWords.Units.Read(own) : null);
    }
}
