using StudioBot.Chat.Replies;
using StudioBot.Records.Members;

namespace StudioBot.Chat;

/// <summary>What somebody else hears of a message, in private.</summary>
/// <param name="To">Who.</param>
/// <param name="Reply">What.</param>
public sealed record Aside(Member To, Reply Reply);
