using System.Text.Json;

namespace StudioBot.Host.Tests.Support;

/// <summary>One call as the stand-in got it.</summary>
internal sealed record Call(string Method, JsonElement Body, DateTimeOffset At)
{
    public long Chat => Body.TryGetProperty("chat_id", out var chat)
        ? chat.ValueKind == JsonValueKind.Number ? chat.GetInt64() : long.Parse(chat.GetString()!, null)
        : 0;

    public string? Text => Body.TryGetProperty("text", out var text) ? text.GetString() : null;

    public bool IsHtml => Body.TryGetProperty("parse_mode", out var mode)
        && "html".Equals(mode.GetString(), StringComparison.OrdinalIgnoreCase);

    public bool IsSend => Method == "sendMessage";

    /// <summary>What the button of this label carries.</summary>
    public string DataOf(string label) => Body.GetProperty("reply_markup").GetProperty("inline_keyboard").EnumerateArray()
        .SelectMany(row => row.EnumerateArray())
        .First(key => key.GetProperty("text").GetString() == label)
        .GetProperty("callback_data").GetString()!;
}
