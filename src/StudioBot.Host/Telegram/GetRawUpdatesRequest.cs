using System.Text.Json;
using Telegram.Bot.Requests;

namespace StudioBot.Host.Telegram;

/// <summary>Asks for updates and leaves each as it came: one that can't be read must not hold up the others.</summary>
internal sealed class GetRawUpdatesRequest() : RequestBase<JsonElement[]>("getUpdates")
{
    /// <summary>The first update wanted; all before it are confirmed and forgotten.</summary>
    public long? Offset { get; init; }

    /// <summary>The most at once; the service gives 100 at most.</summary>
    public int Limit { get; init; } = 100;

    /// <summary>How long the service may wait for something to happen, in seconds; it waits 50 at most.</summary>
    public int Timeout { get; init; } = 25;

    /// <summary>The kinds wanted. Always named: left out means “as last time”.</summary>
    public IReadOnlyList<string> AllowedUpdates { get; init; } =
        ["message", "edited_message", "callback_query", "my_chat_member"];
}
