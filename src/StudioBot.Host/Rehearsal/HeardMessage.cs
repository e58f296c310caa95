using StudioBot.Records.Post;

namespace StudioBot.Host.Rehearsal;

/// <summary>One message of the bot, as somebody saw it.</summary>
/// <param name="At">Studio time.</param>
/// <param name="To">A member as the talk names them, or <c>group</c>.</param>
/// <param name="IsPing">It said so by itself.</param>
/// <param name="Text">Its words.</param>
/// <param name="Buttons">What stands on its buttons.</param>
internal sealed record HeardMessage(
    DateTimeOffset At, string To, bool IsPing, string Text, IReadOnlyList<string> Buttons)
{
    /// <summary>The picture or file it came with; none: words alone.</summary>
    public PostFile? File { get; init; }
}
