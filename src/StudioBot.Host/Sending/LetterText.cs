using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace StudioBot.Host.Sending;

/// <summary>A letter as the text that a post keeps.</summary>
internal static class LetterText
{
    private static readonly JsonSerializerOptions Compact = new(JsonSerializerDefaults.Web)
    {
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        RespectRequiredConstructorParameters = true,
        RespectNullableAnnotations = true,
    };

    /// <summary>The text.</summary>
    public static string Of(Letter letter) => JsonSerializer.Serialize(letter, Compact);

    /// <summary>The text of the same letter in another chat, where the messages it answers and takes the place of are
    /// unknown.</summary>
    public static string Elsewhere(string text)
    {
        var letter = JsonNode.Parse(text)!.AsObject();
        letter.Remove("replyTo");
        letter.Remove("message");
        return letter.ToJsonString(Compact);
    }

    /// <summary>The letter.</summary>
    /// <exception cref="JsonException">The text is no letter.</exception>
    public static Letter Read(string text) =>
        JsonSerializer.Deserialize<Letter>(text, Compact) ?? throw new JsonException("An empty letter.");
}
