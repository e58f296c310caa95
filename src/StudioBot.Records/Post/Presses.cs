using Dapper;
using Microsoft.Data.Sqlite;

namespace StudioBot.Records.Post;

/// <summary>What stands behind the buttons that may write.</summary>
public sealed class Presses
{
    private readonly SqliteConnection connection;

    internal Presses(SqliteConnection connection) => this.connection = connection;

    /// <summary>How long a button that is void is remembered, to say so when it is pressed.</summary>
    public static TimeSpan Kept { get; } = TimeSpan.FromDays(8);

    private const string PutOne = """
        insert into press (press_key, owner_user_id, chat_id, line, agrees, expires_at)
        values ($key, $owner, $chat, $line, $agrees, $expires)
        """;

    /// <summary>Puts a line behind a button, in the transaction that puts the button's message.</summary>
    /// <exception cref="SqliteException">The key is taken, shorter than 16 or longer than 64 characters.</exception>
    public void Put(Press press) => connection.Execute(PutOne, new
    {
        key = press.Key,
        owner = press.OwnerUserId,
        chat = press.ChatId,
        line = press.Line,
        agrees = press.Agrees ? 1 : 0,
        expires = Booked.At(press.ExpiresAt),
    });

    private const string UseOne = """
        update press
        set used_at = $now
        where press_key = $key
          and (owner_user_id is null or owner_user_id = $user)
          and chat_id = $chat
          and used_at is null
          and expires_at > $now
        returning line, agrees
        """;

    private const string Found = """
        select owner_user_id as ownerUserId, used_at as usedAt
        from press
        where press_key = $key
          and chat_id = $chat
        """;

    /// <summary>Somebody presses a button; only its owner, in its chat, in time and for the first time says its line.
    /// </summary>
    public PressVerdict Use(string key, long userId, long chatId, DateTimeOffset now)
    {
        var press = new { key, user = userId, chat = chatId, now = Booked.At(now) };
        if (connection.QuerySingleOrDefault<SaidRow>(UseOne, press) is { } said)
        {
            return new PressVerdict.Said(said.Line, said.Agrees != 0);
        }

        return connection.QuerySingleOrDefault<Row>(Found, press) switch
        {
            null => new PressVerdict.Unknown(),
            { OwnerUserId: { } owner } when owner != userId => new PressVerdict.SomebodyElses(),
            { UsedAt: not null } => new PressVerdict.UsedBefore(),
            _ => new PressVerdict.Expired(),
        };
    }

    private const string Forget = """
        delete from press
        where expires_at < $before
        """;

    /// <summary>Forgets the buttons that have been void for more than eight days.</summary>
    /// <returns>How many went.</returns>
    public int Prune(DateTimeOffset now) => connection.Execute(Forget, new { before = Booked.At(now - Kept) });

    private sealed record Row(long? OwnerUserId, long? UsedAt);

    // Settable, not positional: what an update returns has no declared type for a constructor to be matched by.
    private sealed record SaidRow
    {
        public string Line { get; init; } = string.Empty;

        public long Agrees { get; init; }
    }
}
