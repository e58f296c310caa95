using System.Globalization;
using System.Text.Json;

namespace StudioBot.Host.Telegram;

/// <summary>An update as it came, with just enough read of it to keep it once and in its chat's order.</summary>
/// <param name="UpdateId">The service's number. No clock: it may start anew, lower.</param>
/// <param name="Kind">What it is: <c>message</c>, <c>edited_message 1700000000</c> (each edit is a kind of its own),
/// <c>callback_query</c> …</param>
/// <param name="Chat">Where; 0 where it names no chat.</param>
/// <param name="Message">The message it is, or is about.</param>
/// <param name="Press">The press's own number.</param>
/// <param name="Raw">All of it.</param>
internal sealed record ReceivedUpdate(
    long UpdateId, string Kind, long Chat, long? Message, string? Press, string Raw)
{
    private const string Unreadable = "unreadable";

    /// <summary>Reads it, whatever it is; nothing where even its number is missing.</summary>
    public static ReceivedUpdate? Of(JsonElement update)
    {
        if (Number(update, "update_id") is not { } id)
        {
            return null;
        }

        try
        {
            return Read(id, update);
        }
        catch (InvalidOperationException noText)
        {
            // A name or a word of it is no text at all. It is kept, so that it is told of and the next ones come.
            return new ReceivedUpdate(id, Unreadable, 0, null, null, JsonSerializer.Serialize(noText.Message));
        }
    }

    private static ReceivedUpdate Read(long id, JsonElement update)
    {
        var (name, body) = update.EnumerateObject()
            .Where(member => member.Value.ValueKind == JsonValueKind.Object)
            .Select(member => (member.Name, member.Value))
            .FirstOrDefault(member => member.Name.Length > 0, ("unknown", default));
        var press = name == "callback_query" ? Text(body, "id") : null;
        var message = name == "callback_query" ? Member(body, "message") : body;
        var chat = Member(message, "chat");
        var kind = Number(body, "edit_date") is { } edited && name == "edited_message"
            ? string.Create(CultureInfo.InvariantCulture, $"{name} {edited}")
            : name;
        return new ReceivedUpdate(
            id, kind, Number(chat, "id") ?? 0, Number(message, "message_id"), press, update.GetRawText());
    }

    private static JsonElement Member(JsonElement of, string name) =>
        of.ValueKind == JsonValueKind.Object && of.TryGetProperty(name, out var member) ? member : default;

    private static long? Number(JsonElement of, string name) =>
        Member(of, name) is { ValueKind: JsonValueKind.Number } number && number.TryGetInt64(out var value)
            ? value
            : null;

    private static string? Text(JsonElement of, string name) =>
        Member(of, name) is { ValueKind: JsonValueKind.String } text ? text.GetString() : null;
}
