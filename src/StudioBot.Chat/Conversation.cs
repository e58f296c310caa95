using StudioBot.Chat.Replies;

namespace StudioBot.Chat;

/// <summary>From a message to its answer.</summary>
public sealed class Conversation(Catalogue catalogue)
{
    /// <summary>How the message is understood; nothing is done.</summary>
    public Heard Hear(Turn turn, Studio studio) => throw new InvalidOperationException($"{catalogue} {turn} {studio}");

    /// <summary>The answer; none where the message is not meant for the bot.</summary>
    public Reply? Answer(Turn turn, Studio studio) => throw new InvalidOperationException($"{catalogue} {turn} {studio}");
}
