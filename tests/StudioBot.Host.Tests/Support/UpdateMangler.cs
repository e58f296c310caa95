using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;

namespace StudioBot.Host.Tests.Support;

/// <summary>Updates as no service should send them: real ones with members missing, doubled, renamed, of the wrong type,
/// far too large, too deep or no text, and some cut off.</summary>
internal sealed class UpdateMangler(int seed)
{
    private const long Nora = 7;

    // What JSON can hold and an update must not.
    private static readonly string[] Junk =
    [
        "null", "true", "0", "-1", "1e400", "-1e400", "9223372036854775807", "9223372036854775808", "3000000000", "0.5",
        "1e-7", "253402300800", "-62135596801", "\"\"", "\"x\"", "\"7\"", "\"\\ud800\"", "\"\\u0000\"", "\"\\udc00\\ud800\"",
        "\"\\u202e\\u200b\"", "[]", "[[]]", "{}", "[1,2,3]", "{\"id\":7}", "{\"\":1}", "{\"\\ud800\":1}", "[null]",
    ];

    private static readonly string[] Words =
    [
        "room 20C 58%", "ratio 3:1 250 ml", "used 20 ml white", "help", "stock", "/start", "undo", "30cm panel bloom",
        "", " ", "😬👍🏽", "٢٠ ml", "a\u0000b", "<b>&amp;", "\u202eabc", "~AAAAAAAAAAAAAAAA", "join ABCDEFGHJK",
    ];

    private readonly Random random = new(seed);
    private long number;

    /// <summary>The next one, as text; it may be no JSON at all.</summary>
    public string Next()
    {
        var text = Mangled(Real());
        return random.Next(40) switch
        {
            0 => text[..random.Next(text.Length)],
            1 => Doubled(text),
            2 => text.Insert(random.Next(text.Length + 1), $"{(char)random.Next(1, 0xd800)}"),
            _ => text,
        };
    }

    private JsonObject Real()
    {
        number++;
        var chat = random.Next(4) switch { 0 => StandInUpdates.GroupChat, 1 => random.Next(1000, 100_000), _ => Nora };
        var update = random.Next(5) switch
        {
            0 => StandInUpdates.Edit(number, chat, (int)number, Word(), 1_764_000_000 + number, Nora),
            1 => StandInUpdates.Press(number, chat, (int)number, $"press {number}", Word(), Nora),
            2 => Changed(chat),
            _ => StandInUpdates.Message(number, chat, (int)number, Word(), Nora),
        };
        if (update["message"] is JsonObject message)
        {
            Adorn(message);
        }

        return update;
    }

    // Now and then a photo with its caption, something passed on, an answer to the bot.
    private void Adorn(JsonObject message)
    {
        switch (random.Next(6))
        {
            case 0:
                message.Remove("text");
                message["caption"] = Word();
                message["photo"] = new JsonArray(new JsonObject
                {
                    ["file_id"] = "f",
                    ["file_unique_id"] = "u",
                    ["width"] = 90,
                    ["height"] = 90,
                });
                break;
            case 1:
                message["forward_origin"] = new JsonObject { ["type"] = "hidden_user", ["date"] = 1, ["sender_user_name"] = "x" };
                break;
            case 2:
                message["reply_to_message"] = message.DeepClone();
                break;
        }
    }

    private JsonObject Changed(long chat) => new()
    {
        ["update_id"] = number,
        ["my_chat_member"] = new JsonObject
        {
            ["chat"] = new JsonObject { ["id"] = chat, ["type"] = "private" },
            ["from"] = new JsonObject { ["id"] = Nora, ["is_bot"] = false, ["first_name"] = "Nora" },
            ["date"] = 1_764_000_000,
            ["old_chat_member"] = new JsonObject { ["status"] = "member" },
            ["new_chat_member"] = new JsonObject { ["status"] = "kicked" },
        },
    };

    private string Mangled(JsonObject update)
    {
        // The mark is put in as a value of its own and exchanged in the text, where anything can stand.
        var marks = new List<string>();
        for (var times = random.Next(4); times > 0; times--)
        {
            var members = Members(update).ToList();
            var (of, name) = members[random.Next(members.Count)];
            switch (random.Next(4))
            {
                case 0:
                    of.Remove(name);
                    break;
                case 1 when of[name] is { } value:
                    of.Remove(name);
                    of[$"{name}{random.Next(10)}"] = value;
                    break;
                default:
                    of[name] = $"mark {marks.Count}.";
                    marks.Add(random.Next(20) == 0 ? Deep() : Junk[random.Next(Junk.Length)]);
                    break;
            }
        }

        var text = new StringBuilder(update.ToJsonString());
        for (var mark = 0; mark < marks.Count; mark++)
        {
            text.Replace(string.Create(CultureInfo.InvariantCulture, $"\"mark {mark}.\""), marks[mark]);
        }

        return text.ToString();
    }

    private static IEnumerable<(JsonObject Of, string Name)> Members(JsonObject of) => of.SelectMany(member =>
        new[] { (of, member.Key) }.Concat(member.Value is JsonObject inner ? Members(inner) : []));

    private string Deep()
    {
        var depth = random.Next(1, 1000);
        return new string('[', depth) + new string(']', depth);
    }

    // The same number twice, the second of another kind.
    private string Doubled(string text) =>
        text.StartsWith('{') ? "{\"update_id\":" + Junk[random.Next(Junk.Length)] + "," + text[1..] : text;

    private string Word() => Words[random.Next(Words.Length)];
}
