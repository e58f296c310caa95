using System.Text.Json;
using StudioBot.Records;
using StudioBot.Records.Post;

namespace StudioBot.Host.Sending;

/// <summary>A claimed post with all that is needed of the records to send it.</summary>
/// <param name="Post">The post.</param>
/// <param name="Letter">What it says; none where it can't be read.</param>
internal sealed record Outgoing(Post Post, Letter? Letter)
{
    /// <summary>The message that it takes the place of; none: it is a new one.</summary>
    public long? Earlier { get; private init; }

    /// <summary>Why it can't be read.</summary>
    public string? Trouble { get; private init; }

    /// <summary>Ends when it is not on the wire any more.</summary>
    public TaskCompletionSource Flight { get; } = new(TaskCreationOptions.RunContinuationsAsynchronously);

    /// <summary>Reads what a claimed post needs, in the session that claimed it.</summary>
    public static Outgoing Of(Post post, StudioSession session)
    {
        try
        {
            var letter = Letter.Of(post, session.Post);
            return new Outgoing(post, letter)
            {
                Earlier = letter.InPlaceOf is { } key ? session.Post.PutOnce(key)?.MessageId : letter.Message,
            };
        }
        catch (JsonException unreadable)
        {
            return new Outgoing(post, null) { Trouble = unreadable.Message };
        }
    }
}
