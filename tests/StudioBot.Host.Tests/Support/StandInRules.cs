using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using SkiaSharp;

namespace StudioBot.Host.Tests.Support;

/// <summary>What the service refuses, in its own words.</summary>
internal static partial class StandInRules
{
    private static readonly string[] Methods =
    [
        "getMe", "getUpdates", "deleteWebhook", "setMyCommands", "sendMessage", "sendDocument", "sendPhoto",
        "editMessageText", "answerCallbackQuery", "pinChatMessage", "unpinChatMessage",
    ];

    /// <summary>Why it says no; nothing where it would not.</summary>
    public static Answer? Refusal(Call call) => call.Method switch
    {
        var method when !Methods.Contains(method) => Answer.No(404, "Not Found"),
        "sendMessage" or "editMessageText" => Message(call) ?? Keys(call.Body),
        "sendDocument" => Document(call) ?? Keys(call.Body),
        "sendPhoto" => Document(call) ?? Photo(call.File!.Value.Content) ?? Keys(call.Body),
        "setMyCommands" => Commands(call.Body),
        "answerCallbackQuery" => Press(call),
        _ => null,
    };

    private static Answer? Message(Call call)
    {
        if (call.Chat == 0)
        {
            return Bad("chat_id is empty");
        }

        var (text, trouble) = call.IsHtml ? MarkupRules.Read(call.Text ?? "") : (call.Text ?? "", null);
        if (trouble is not null)
        {
            return Answer.No(400, trouble);
        }

        // Counted in characters, not in halves of them, after the markup is read.
        return text.Trim(' ', '\n').Length == 0 ? Bad("text must be non-empty")
            : text.EnumerateRunes().Count() > 4096 ? Bad("message is too long")
            : Encoding.UTF8.GetByteCount(call.Text!) > 32 * 1024 ? Bad("message is too long")
            : null;
    }

    private static Answer? Document(Call call)
    {
        if (call.Chat == 0)
        {
            return Bad("chat_id is empty");
        }

        var (caption, trouble) = call.IsHtml ? MarkupRules.Read(call.Text ?? "") : (call.Text ?? "", null);
        return trouble is not null ? Answer.No(400, trouble)
            : call.File is not { Content.Length: > 0 } ? Bad("file must be non-empty")
            : caption.EnumerateRunes().Count() > 1024 ? Bad("message caption is too long")
            : null;
    }

    // What is no picture, too large or too narrow, in the order the service looks at it.
    private static Answer? Photo(byte[] content)
    {
        using var image = SKBitmap.Decode(content);
        return image is null ? Bad("IMAGE_PROCESS_FAILED")
            : content.Length > 10 * 1024 * 1024 ? Bad("file is too big")
            : image.Width + image.Height > 10_000 ? Bad("PHOTO_INVALID_DIMENSIONS")
            : Math.Max(image.Width, image.Height) > 20 * Math.Min(image.Width, image.Height) ? Bad("PHOTO_INVALID_DIMENSIONS")
            : null;
    }

    private static Answer? Keys(JsonElement body)
    {
        if (!body.TryGetProperty("reply_markup", out var markup))
        {
            return null;
        }

        var keys = markup.GetProperty("inline_keyboard").EnumerateArray().SelectMany(row => row.EnumerateArray());
        return keys.Any(key => Encoding.UTF8.GetByteCount(key.GetProperty("callback_data").GetString()!) is 0 or > 64)
            ? Bad("BUTTON_DATA_INVALID")
            : keys.Any(key => key.GetProperty("text").GetString()!.Length == 0)
                ? Bad("Text buttons are unallowed in the inline keyboard")
                : null;
    }

    private static Answer? Commands(JsonElement body) =>
        body.GetProperty("commands").EnumerateArray().ToList() is var commands
        && (commands.Count > 100
            || commands.Any(command => !Word().IsMatch(command.GetProperty("command").GetString()!)))
            ? Bad("BOT_COMMAND_INVALID")
            : commands.Any(command => command.GetProperty("description").GetString()!.Length is 0 or > 256)
                ? Bad("BOT_COMMAND_DESCRIPTION_INVALID")
                : null;

    private static Answer? Press(Call call) =>
        call.Body.TryGetProperty("text", out var text) && text.GetString() is { Length: > 200 }
            ? Bad("MESSAGE_TOO_LONG")
            : null;

    private static Answer Bad(string why) => Answer.No(400, "Bad Request: " + why);

    [GeneratedRegex(@"\A[a-z0-9_]{1,32}\z")]
    private static partial Regex Word();
}
