using System.Globalization;
using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Craft.Units;
using StudioBot.Records.Acts;

namespace StudioBot.Records.Members;

/// <summary>Who belongs to the studio, and by which accounts the chat service knows them.</summary>
public sealed class MemberRecords
{
    /// <summary>The account of who sits where the program runs; the chat service has none of that number.</summary>
    public const long Terminal = 0;

    internal static readonly StoredWords<Role> Roles = new((Role.Member, "member"), (Role.Steward, "steward"));

    private readonly SqliteConnection connection;
    private readonly KeptRows kept;
    private readonly Remembered<List<Member>> all;
    private readonly Remembered<Dictionary<long, string>> names;
    private readonly RememberedBy<long, Member?> byAccount;

    internal MemberRecords(SqliteConnection connection)
    {
        this.connection = connection;
        kept = new KeptRows(connection);
        all = new(connection, ["member"], () => [.. connection.Query<Row>(Here).Select(row => row.From())]);
        names = new(connection, ["member"], () =>
            connection.Query<NameRow>(Called).ToDictionary(row => row.Id, row => row.Name));
        byAccount = new(connection, ["member", "account"], account =>
            connection.QuerySingleOrDefault<Row>(Behind, new { user = account })?.From());
    }

    private const string Here = """
        select id, name, role, units
        from member
        where left_at is null
        order by id
        """;

    /// <summary>All who have not left, in the order they came.</summary>
    public IReadOnlyList<Member> All() => all.Value;

    private const string Called = """
        select id, name
        from member
        order by id
        """;

    /// <summary>How everybody is called who ever belonged to it, by number: the books name who has left, too.
    /// </summary>
    public IReadOnlyDictionary<long, string> Names() => names.Value;

    private const string Behind = """
        select member.id, member.name, member.role, member.units
        from account
        join member on member.id = account.member_id
        where account.user_id = $user
          and member.left_at is null
        """;

    /// <summary>Whose account this is; none for a stranger and for who has left.</summary>
    public Member? ByAccount(long userId) => byAccount.Of(userId);

    private const string BehindGone = """
        select member.id, member.name, member.role, member.units
        from account
        join member on member.id = account.member_id
        where account.user_id = $user
          and member.left_at is not null
        """;

    /// <summary>Who had this account when they left; none where nobody left with it.</summary>
    public Member? Former(long userId) =>
        connection.QuerySingleOrDefault<Row>(BehindGone, new { user = userId })?.From();

    private const string Join = """
        insert into member (name, role, units, joined_at)
        values ($name, $role, $units, $at)
        returning id
        """;

    /// <summary>Somebody joins.</summary>
    /// <param name="name">As the studio will call them.</param>
    /// <param name="role">What they may do.</param>
    /// <param name="at">When.</param>
    /// <param name="units">The units they ask for; none: the studio's.</param>
    /// <param name="act">The act by which they join; none where a studio is founded.</param>
    /// <exception cref="SqliteException">The name is taken, empty or longer than 40 characters.</exception>
    public Member Add(string name, Role role, DateTimeOffset at, UnitSystem? units = null, Act? act = null)
    {
        var id = connection.ExecuteScalar<long>(Join, new
        {
            name,
            role = Roles.Of(role),
            units = units is { } own ? StoredWords.Units.Of(own) : null,
            at = Booked.At(at),
        });
        kept.Added(act, KeptTable.Member, id);
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

    private const string Speaking = """
        select user_id
        from account
        where member_id = $member
        order by added_at, user_id
        """;

    /// <summary>The accounts that speak for this member, the oldest first.</summary>
    public IReadOnlyList<long> Accounts(long memberId) =>
        connection.Query<long>(Speaking, new { member = memberId }).AsList();

    private const string Silence = """
        delete from account
        where member_id = $member
        """;

    /// <summary>From now on this account speaks for this member, and none that did before.</summary>
    /// <exception cref="SqliteException">The account speaks for somebody else.</exception>
    public void MoveAccount(long memberId, long userId, Act act) =>
        kept.Change(act, KeptTable.Accounts, memberId, () =>
        {
            connection.Execute(Silence, new { member = memberId });
            AddAccount(userId, memberId, act.WrittenAt);
        });

    private const string Rename = """
        update member
        set name = $name, role = $role, units = $units
        where id = $id
        """;

    /// <summary>A member is called otherwise, may do something else or asks for other units.</summary>
    /// <exception cref="SqliteException">The name is taken, empty or longer than 40 characters.</exception>
    public void Change(Member member, Act act) => kept.Change(act, KeptTable.Member, member.Id, () =>
        connection.Execute(Rename, new
        {
            id = member.Id,
            name = member.Name,
            role = Roles.Of(member.Role),
            units = member.Units is { } own ? StoredWords.Units.Of(own) : null,
        }));

    private const string Go = """
        update member
        set left_at = $at
        where id = $member
          and left_at is null
        """;

    /// <summary>A member leaves; what they booked stays.</summary>
    public void Leave(long memberId, Act act) => kept.Change(act, KeptTable.Member, memberId, () =>
        connection.Execute(Go, new { member = memberId, at = Booked.At(act.WrittenAt) }));

    private const string Back = """
        update member
        set left_at = null, role = $role
        where id = $member
        """;

    /// <summary>Who left is back, under their name and with what they booked.</summary>
    /// <param name="former">Who, with what they may do from now on.</param>
    /// <param name="act">The act by which they come back.</param>
    public void Return(Member former, Act act) => kept.Change(act, KeptTable.Member, former.Id, () =>
        connection.Execute(Back, new { member = former.Id, role = Roles.Of(former.Role) }));

    // Also out of what acts kept of the row: an undo must not bring the name back.
    private const string ForgetName = """
        update member
        set name = $name, units = null, left_at = coalesce(left_at, $at)
        where id = $member;
        update setting_change
        set row_before = json_set(row_before, '$[0].name', $name), row_after = json_set(row_after, '$[0].name', $name)
        where table_name = 'member'
          and row_key = $key;
        delete from setting_change
        where table_name = 'account'
          and row_key = $key;
        update refusal
        set user_id = 0, name = '', words = ''
        where user_id in (select user_id from account where member_id = $member);
        delete from account
        where member_id = $member
        """;

    /// <summary>Takes the name and the accounts of somebody out of the file, for good; what they booked stays, under
    /// a name that says nothing. What others typed about them is not touched.</summary>
    /// <returns>How they are called now.</returns>
    public string Forget(long memberId, DateTimeOffset at)
    {
        var key = memberId.ToString(CultureInfo.InvariantCulture);
        var name = $"former member {key}";
        connection.Execute(ForgetName, new { member = memberId, key, name, at = Booked.At(at) });
        return name;
    }

    private sealed record NameRow(long Id, string Name);

    private sealed record Row(long Id, string Name, string Role, string? Units)
    {
        public Member From() =>
            new(Id, Name, Roles.Read(Role), Units is { } own ? StoredWords.Units.Read(own) : null);
    }
}
