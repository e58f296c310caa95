namespace StudioBot.Craft.Reminders;

/// <summary>What goes to a chat as one message.</summary>
/// <param name="Chat">The chat.</param>
/// <param name="IsDigest">It tells what was missed.</param>
/// <param name="Lines">At least one, the most pressing first.</param>
public sealed record PingMessage(long Chat, bool IsDigest, IReadOnlyList<PingLine> Lines);
