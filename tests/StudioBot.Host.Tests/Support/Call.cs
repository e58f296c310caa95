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
}
