using System.Text.Json;
using System.Text.Json.Nodes;

namespace StudioBot.Host.Tests.Support;

/// <summary>The updates that wait at the stand-in: confirmed by an offset above them, and by nothing else.</summary>
internal sealed class StandInUpdates : IDisposable
{
    public const long GroupChat = -1001;

    private readonly Lock turn = new();
    private readonly List<JsonObject> waiting = [];
    private readonly CancellationTokenSource end = new();
    private int era;
    private TaskCompletionSource more = new(TaskCreationOptions.RunContinuationsAsynchronously);

    /// <summary>Somebody writes; in private unless told otherwise by the account that the chat has the number of.</summary>
    public static JsonObject Message(
        long update, long chat, int message, string? text, long? by = null, DateTimeOffset? at = null)
    {
        var body = Body(chat, message, text, by);
        if (at is { } typed)
        {
            body["date"] = typed.ToUnixTimeSeconds();
        }

        return new() { ["update_id"] = update, ["message"] = body };
    }

    public static JsonObject Edit(long update, long chat, int message, string text, long editDate, long? by = null)
    {
        var body = Body(chat, message, text, by);
        body["edit_date"] = editDate;
        return new() { ["update_id"] = update, ["edited_message"] = body };
    }

    public static JsonObject Press(long update, long chat, int message, string press, string data, long by = 77)
    {
        var shown = Body(chat, message, "an answer");
        shown["from"] = Person(123456789, isBot: true);
        return new()
        {
            ["update_id"] = update,
            ["callback_query"] = new JsonObject
            {
                ["id"] = press,
                ["from"] = Person(by, isBot: false),
                ["chat_instance"] = "1",
                ["message"] = shown,
                ["data"] = data,
            },
        };
    }

    public void Add(params JsonObject[] updates)
    {
        lock (turn)
        {
            waiting.AddRange(updates);
            more.TrySetResult();
        }
    }

    /// <summary>Whether this one has not been confirmed.</summary>
    public bool Waits(JsonObject update)
    {
        lock (turn)
        {
            return waiting.Contains(update);
        }
    }

    public void Clear()
    {
        lock (turn)
        {
            waiting.Clear();
            more.TrySetResult();
            era++;
        }
    }

    public void End() => end.Cancel();

    public void Dispose() => end.Dispose();

    public async Task<JsonArray> Next(JsonElement asked, CancellationToken cancellation)
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancellation, end.Token);
        var asking = Volatile.Read(ref era);
        while (!stop.IsCancellationRequested)
        {
            Task arrival;
            lock (turn)
            {
                // Whoever asked before all was cleared may be gone, and confirms nothing any more.
                if (asking != era)
                {
                    return [];
                }

                if (asked.TryGetProperty("offset", out var offset))
                {
                    waiting.RemoveAll(update => update["update_id"]!.GetValue<long>() < offset.GetInt64());
                }

                if (waiting.Count > 0)
                {
                    return [.. waiting.Select(update => update.DeepClone())];
                }

                more = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
                arrival = more.Task;
            }

            await Task.WhenAny(arrival, Task.Delay(Timeout.Infinite, stop.Token));
        }

        return [];
    }

    private static JsonObject Body(long chat, int message, string? text, long? by = null)
    {
        var body = new JsonObject
        {
            ["message_id"] = message,
            ["date"] = 1_764_000_000,
            ["chat"] = new JsonObject { ["id"] = chat, ["type"] = chat < 0 ? "supergroup" : "private" },
            ["from"] = Person(by ?? (chat < 0 ? 42 : chat), isBot: false),
        };
        if (text is not null)
        {
            body["text"] = text;
        }

        return body;
    }

    private static JsonObject Person(long id, bool isBot) =>
        new() { ["id"] = id, ["is_bot"] = isBot, ["first_name"] = "Nora" };
}
