using Microsoft.Data.Sqlite;
using Telegram.Bot;

namespace StudioBot.Benchmarks;

/// <summary>The ceiling: the same client against the same server, saying back what it hears, and on request committing a
/// message's rows one message at a time first.</summary>
internal static class EchoBot
{
    private const int MostSends = 100;

    private const string Tables = """
        pragma journal_mode = wal;
        pragma synchronous = full;
        create table inbox (id integer primary key, raw text not null);
        create table act (id integer primary key, words text not null, happened_at integer not null);
        create table entry (id integer primary key, act_id integer not null, amount integer not null);
        create table post (id integer primary key, chat_id integer not null, payload text not null)
        """;

    // What a durable “used” comes to: the message, the act, its two lines, the answer.
    private const string Rows = """
        insert into inbox (raw) values ($words);
        insert into act (words, happened_at) values ($words, $now);
        insert into entry (act_id, amount) values (last_insert_rowid(), 20000), (last_insert_rowid(), -20000);
        insert into post (chat_id, payload) values ($chat, $words)
        """;

    /// <summary>Until it is killed.</summary>
    /// <param name="url">Where the chat service is.</param>
    /// <param name="file">Where it commits; none: nowhere.</param>
    public static async Task Run(string url, string? file)
    {
        using var http = new HttpClient();
        var bot = new TelegramBotClient(new TelegramBotClientOptions(ChatServer.Token, url), http);
        using var connection = file is null ? null : new SqliteConnection($"Data Source={file}");
        using var commit = Prepared(connection);
        using var flights = new SemaphoreSlim(MostSends);
        var offset = 0;
        while (true)
        {
            foreach (var update in await bot.GetUpdates(offset, 100, 25))
            {
                offset = update.Id + 1;
                var (chat, words) = (update.Message!.Chat.Id, update.Message.Text!);
                if (commit is not null)
                {
                    commit.Parameters["$chat"].Value = chat;
                    commit.Parameters["$words"].Value = words;
                    commit.Parameters["$now"].Value = TimeProvider.System.GetTimestamp();
                    using var transaction = connection!.BeginTransaction();
                    commit.Transaction = transaction;
                    commit.ExecuteNonQuery();
                    transaction.Commit();
                }

                await flights.WaitAsync();
                _ = Send(chat, words);
            }
        }

        async Task Send(long chat, string words)
        {
            try
            {
                await bot.SendMessage(chat, words);
            }
            finally
            {
                flights.Release();
            }
        }
    }

    private static SqliteCommand? Prepared(SqliteConnection? connection)
    {
        if (connection is null)
        {
            return null;
        }

        connection.Open();
        using (var tables = new SqliteCommand(Tables, connection))
        {
            tables.ExecuteNonQuery();
        }

        var commit = new SqliteCommand(Rows, connection);
        commit.Parameters.Add("$chat", SqliteType.Integer);
        commit.Parameters.Add("$words", SqliteType.Text);
        commit.Parameters.Add("$now", SqliteType.Integer);
        return commit;
    }
}
