using System.Text.Json.Nodes;

namespace StudioBot.Host.Rehearsal;

/// <summary>What people do, as the chat service would hand it over.</summary>
internal static class TalkUpdates
{
    /// <summary>The studio's group.</summary>
    public const long Group = -1001;

    /// <summary>Our own account.</summary>
    public const long Us = 1;

    /// <summary>Somebody writes.</summary>
    public static JsonObject Message(
        long update, long message, Player who, bool inGroup, string words, bool hasPhoto, DateTimeOffset at)
    {
        var body = Body(message, who, inGroup, at);
        if (hasPhoto)
        {
            body["caption"] = words;
            body["photo"] = new JsonArray(new JsonObject
            {
                ["file_id"] = $"photo-{message}",
                ["file_unique_id"] = $"p{message}",
                ["width"] = 1280,
                ["height"] = 960,
            });
        }
        else
        {
            body["text"] = words;
        }

        return new JsonObject { ["update_id"] = update, ["message"] = body };
    }

    /// <summary>Somebody corrects what they wrote.</summary>
    public static JsonObject Edit(
        long update, long message, Player who, bool inGroup, string words, DateTimeOffset at)
    {
        var body = Body(message, who, inGroup, at);
        body["edit_date"] = at.ToUnixTimeSeconds();
        body["text"] = words;
        return new JsonObject { ["update_id"] = update, ["edited_message"] = body };
    }

    /// <summary>Somebody presses a button.</summary>
    public static JsonObject Press(long update, long message, Player who, bool inGroup, string data, DateTimeOffset at)
    {
        var shown = Body(message, who, inGroup, at);
        shown["from"] = new JsonObject { ["id"] = Us, ["is_bot"] = true, ["first_name"] = "StudioBot" };
        return new JsonObject
        {
            ["update_id"] = update,
            ["callback_query"] = new JsonObject
            {
                ["id"] = $"press-{update}",
                ["from"] = Person(who),
                ["chat_instance"] = "1",
                ["message"] = shown,
                ["data"] = data,
            },
        };
    }

    private static JsonObject Body(long message, Player who, bool inGroup, DateTimeOffset at) => new()
    {
        ["message_id"] = message,
        ["date"] = at.ToUnixTimeSeconds(),
        ["chat"] = inGroup
            ? new JsonObject { ["id"] = Group, ["type"] = "supergroup", ["title"] = "The studio" }
            : new JsonObject { ["id"] = who.Account, ["type"] = "private", ["first_name"] = who.FirstName },
        ["from"] = Person(who),
    };

    private static JsonObject Person(Player who) =>
        new() { ["id"] = who.Account, ["is_bot"] = false, ["first_name"] = who.FirstName };
}
