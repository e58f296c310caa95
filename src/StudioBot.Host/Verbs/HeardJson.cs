using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using StudioBot.Chat;
using StudioBot.Chat.Reading;

namespace StudioBot.Host.Verbs;

/// <summary>How a message was understood, as JSON.</summary>
internal static class HeardJson
{
    private static readonly JsonSerializerOptions Readable = new()
    {
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>One object: kind, command, understood, error.</summary>
    public static JsonObject Of(HeardLine heard) => new()
    {
        ["kind"] = heard.Kind,
        ["command"] = heard.Command,
        ["understood"] = Understood(heard),
        ["error"] = Of(heard.Error),
    };

    /// <summary>The object on one line.</summary>
    public static string Line(JsonNode node) => node.ToJsonString(Readable);

    private static JsonObject Understood(HeardLine heard) => heard.Understood.Count switch
    {
        0 => [],
        1 => Pairs(heard.Understood.Values.Single()),
        _ => new(heard.Understood.Select(phrase =>
            KeyValuePair.Create<string, JsonNode?>(phrase.Key, Pairs(phrase.Value)))),
    };

    private static JsonObject Pairs(IReadOnlyList<Meaning> meanings)
    {
        var pairs = new JsonObject();
        foreach (var (key, value) in meanings)
        {
            pairs[key] = value;
        }

        return pairs;
    }

    private static JsonObject? Of(Misread? error) => error is null
        ? null
        : new() { ["word"] = error.Word, ["why"] = error.Why, ["try"] = error.Try };
}
