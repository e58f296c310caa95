using Dapper;
using Microsoft.Data.Sqlite;
using StudioBot.Records.Acts;

namespace StudioBot.Records.Members;

/// <summary>Codes by which somebody joins or comes back with a new account: one role, one use, for a while.</summary>
public sealed class Invitations
{
    private readonly SqliteConnection connection;

    internal Invitations(SqliteConnection connection) => this.connection = connection;

    private const string NewOne = """
        insert into invitation (code_hash, role, member_id, expires_at, act_id)
        values ($hash, $role, $member, $expires, $act)
        """;

    /// <summary>A code is good from now on; undo of its act voids it.</summary>
    /// <param name="code">At least 128 random bits in letters; kept as a hash.</param>
    /// <param name="what">What it is good for.</param>
    /// <param name="expiresAt">Until when.</param>
    /// <param name="act">The act that invites.</param>
    /// <exception cref="SqliteException">The code is in use, or there is no such member.</exception>
    public void Put(string code, Invited what, DateTimeOffset expiresAt, Act act) => connection.Execute(NewOne, new
    {
        hash = CodeHash.Of(code),
        role = MemberRecords.Roles.Of(what.Role),
        member = what.MemberId,
        expires = Booked.At(expiresAt),
        act = act.Id,
    });

    private const string UseOne = """
        update invitation
        set used_at = $now
        where code_hash = $hash
          and used_at is null
          and expires_at > $now
          and not exists (
            select 1
            from act
            join member on member.id = act.author_id
            where act.id = invitation.act_id
              and (member.left_at is not null or member.role <> 'steward'))
        returning role, member_id as memberId
        """;

    /// <summary>Somebody says a code: it is used up with that.</summary>
    /// <returns>What it was good for; none where it is unknown, used or too old, or where who invited keeps house no
    /// more: which of these is nobody's business.</returns>
    public Invited? Use(string code, DateTimeOffset now) =>
        connection.QuerySingleOrDefault<Row>(UseOne, new { hash = CodeHash.Of(code), now = Booked.At(now) })?.From();

    private const string Forget = """
        delete from invitation
        where expires_at < $before
        """;

    /// <summary>Forgets the codes that were good until before then.</summary>
    /// <returns>How many went.</returns>
    public int Prune(DateTimeOffset before) => connection.Execute(Forget, new { before = Booked.At(before) });

    // Settable, not positional: what an update returns has no declared type for a constructor to be matched by.
    private sealed record Row
    {
        public string Role { get; init; } = string.Empty;

        public long? MemberId { get; init; }

        public Invited From() => new(MemberRecords.Roles.Read(Role), MemberId);
    }
}
