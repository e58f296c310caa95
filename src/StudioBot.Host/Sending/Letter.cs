using System.Text.Json.Serialization;
using StudioBot.Chat.Replies;
using StudioBot.Records.Post;

namespace StudioBot.Host.Sending;

/// <summary>One message as it will be sent: what a post carries.</summary>
/// <param name="Html">With the service's markup.</param>
/// <param name="Plain">The same words without it, for when the markup does not arrive.</param>
/// <param name="Keys">Rows of buttons under it.</param>
internal sealed record Letter(string Html, string Plain, IReadOnlyList<IReadOnlyList<Key>> Keys)
{
    /// <summary>The message it answers, which the service then shows above it.</summary>
    public long? ReplyTo { get; init; }

    /// <summary>The once-key of the post whose message it takes the place of; it is sent anew where there is
    /// none.</summary>
    public string? InPlaceOf { get; init; }

    /// <summary>The message of the service that it takes the place of, known by its number there.</summary>
    public long? Message { get; init; }

    /// <summary>It has no words, but pins that message, or takes the pin out of it; none: it is words.</summary>
    public bool? Pin { get; init; }

    /// <summary>Whether it answers something that only asked.</summary>
    public bool AnswersQuestion { get; init; }

    /// <summary>The bot says it by itself.</summary>
    public bool ByItself { get; init; }

    /// <summary>A backup goes out with it, made when it is sent; its words are said while there is none.</summary>
    public bool BringsBackup { get; init; }

    /// <summary>What goes out with it, its words as the caption; kept beside the post, not in it.</summary>
    [JsonIgnore]
    public PostFile? File { get; init; }

    /// <summary>Whether that is a picture: it only shows what the words say.</summary>
    [JsonIgnore]
    public bool BringsPicture => File is { } file && ReplyFile.IsOne(file.MediaType);

    /// <summary>The post's own text, with the file that is kept beside it.</summary>
    /// <exception cref="System.Text.Json.JsonException">The text is no letter.</exception>
    public static Letter Of(Post post, Outbox outbox) =>
        LetterText.Read(post.Payload) with { File = outbox.FileOf(post.Id) };
}
