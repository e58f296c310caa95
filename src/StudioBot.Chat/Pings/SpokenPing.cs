using StudioBot.Chat.Replies;

namespace StudioBot.Chat.Pings;

/// <summary>A message that the bot sends by itself.</summary>
/// <param name="Chat">To which chat.</param>
/// <param name="Owner">Whose its buttons are; none: anybody's of the studio.</param>
/// <param name="Reply">What it says.</param>
/// <param name="IsDigest">It tells what was missed.</param>
public sealed record SpokenPing(long Chat, long? Owner, Reply Reply, bool IsDigest);
