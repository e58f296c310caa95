using System.Text.Json;

namespace StudioBot.Host.Tests.Support;

/// <summary>One call as the stand-in got it.</summary>
internal sealed record Call(string Method, JsonElement Body, DateTimeOffset At)
{
    public long Chat => Body.TryGetProperty("chat_id", out var chat)
        ? chat.ValueKind == JsonValueKind.Number ? chat.GetInt64() : long.Parse(chat.GetString()!, null)
        : 0;

    public string? Text =>
        Body.TryGetProperty(Method is "sendDocument" or "sendPhoto" ? "caption" : "text", out var text) ? text.GetString() : null;

    /// <summary>The name and the bytes of the file that came with it; none where none did.</summary>
    public (string Name, byte[] Content)? File =>
        Body.TryGetProperty(Method == "sendPhoto" ? "photo" : "document", out var said) && Part(said) is { ValueKind: JsonValueKind.Object } file
            ? (file.GetProperty("file_name").GetString()!, file.GetProperty("content").GetBytesFromBase64())
            : null;

    // The form may refer to another part of it: attach://0.
    private JsonElement Part(JsonElement said) =>
        said.ValueKind == JsonValueKind.String && Body.TryGetProperty(said.GetString()!.Split("//")[^1], out var part)
            ? part
            : said;

    public bool IsHtml => Body.TryGetProperty("parse_mode", out var mode)
        && "html".Equals(mode.GetString(), StringComparison.OrdinalIgnoreCase);

    public bool IsSend => Method is "sendMessage" or "sendDocument" or "sendPhoto";

    /// <summary>What the button of this label carries.</summary>
    public string DataOf(string label) => Body.GetProperty("reply_markup").GetProperty("inline_keyboard").EnumerateArray()
        .SelectMany(row => row.EnumerateArray())
        .First(key => key.GetProperty("text").GetString() == label)
        .GetProperty("callback_data").GetString()!;
}
