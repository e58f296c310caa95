using Dapper;
using Microsoft.Data.Sqlite;

namespace StudioBot.Records.Members;

/// <summary>The code by which the first steward takes a studio: shown where it runs, one at a time, good once.
/// </summary>
public sealed class ClaimCode
{
    /// <summary>After so many wrong tries it is void.</summary>
    public const int MostTries = 5;

    private readonly SqliteConnection connection;

    internal ClaimCode(SqliteConnection connection) => this.connection = connection;

    private const string Keep = """
        insert into claim_code (id, code_hash, expires_at)
        values (1, $hash, $expires)
        on conflict (id) do update
        set code_hash = $hash, expires_at = $expires, tries = 0, used_at = null
        """;

    /// <summary>This code is good from now on, and the one before it no more.</summary>
    /// <param name="code">At least 40 random bits in letters; kept as a hash.</param>
    /// <param name="expiresAt">Until when.</param>
    public void Put(string code, DateTimeOffset expiresAt) =>
        connection.Execute(Keep, new { hash = CodeHash.Of(code), expires = Booked.At(expiresAt) });

    private const string Count = """
        update claim_code
        set tries = tries + 1
        where used_at is null
          and expires_at > $now
          and tries < $most
        returning code_hash
        """;

    private const string UseUp = """
        update claim_code
        set used_at = $now
        """;

    /// <summary>Somebody says a code, which counts as a try.</summary>
    /// <returns>Whether it is the one, in time, for the first time and within five tries.</returns>
    public bool Try(string code, DateTimeOffset now)
    {
        var at = new { now = Booked.At(now), most = MostTries };
        if (connection.QuerySingleOrDefault<string>(Count, at) is not { } hash
            || !CodeHash.Same(hash, CodeHash.Of(code)))
        {
            return false;
        }

        connection.Execute(UseUp, at);
        return true;
    }
}
