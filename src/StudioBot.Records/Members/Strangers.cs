using Dapper;
using Microsoft.Data.Sqlite;

namespace StudioBot.Records.Members;

/// <summary>Who is none of the studio's, and what they may still do: hear one line a day, and try a few
/// codes.</summary>
public sealed class Strangers
{
    /// <summary>So many wrong codes an account may say in a day; after that the right one is wrong too.</summary>
    public const int MostWrongCodes = 5;

    private static readonly TimeSpan Day = TimeSpan.FromHours(24);

    private readonly SqliteConnection connection;

    internal Strangers(SqliteConnection connection) => this.connection = connection;

    private const string Tell = """
        insert into stranger (chat_account, told_at)
        values ($account, $now)
        on conflict (chat_account) do update
        set told_at = $now
        where told_at is null
           or told_at <= $since
        """;

    /// <summary>Whether this account, or this group, may hear that it is none of the studio's; it has heard it with
    /// that, and does not again for 24 hours.</summary>
    public bool MayHear(long account, DateTimeOffset now) =>
        connection.Execute(Tell, new { account, now = Booked.At(now), since = Booked.At(now - Day) }) > 0;

    private const string Tried = """
        select wrong_codes
        from stranger
        where chat_account = $account
          and wrong_since > $since
        """;

    /// <summary>Whether a code that this account says still counts.</summary>
    public bool MayTry(long account, DateTimeOffset now) =>
        connection.ExecuteScalar<long?>(Tried, new { account, since = Booked.At(now - Day) }) is not >= MostWrongCodes;

    private const string CountOne = """
        insert into stranger (chat_account, wrong_codes, wrong_since)
        values ($account, 1, $now)
        on conflict (chat_account) do update
        set wrong_codes = case when wrong_since > $since then wrong_codes + 1 else 1 end,
            wrong_since = case when wrong_since > $since then wrong_since else $now end
        """;

    /// <summary>This account said a code that is none.</summary>
    public void WasWrong(long account, DateTimeOffset now) =>
        connection.Execute(CountOne, new { account, now = Booked.At(now), since = Booked.At(now - Day) });

    private const string Forget = """
        delete from stranger
        where coalesce(told_at, 0) <= $since
          and coalesce(wrong_since, 0) <= $since
        """;

    /// <summary>Forgets who was quiet for a day.</summary>
    /// <returns>How many went.</returns>
    public int Prune(DateTimeOffset now) => connection.Execute(Forget, new { since = Booked.At(now - Day) });
}
