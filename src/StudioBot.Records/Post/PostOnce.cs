namespace StudioBot.Records.Post;

/// <summary>What is said only once.</summary>
/// <param name="Payload">What to send, JSON as it was put.</param>
/// <param name="MessageId">As which message of the service it arrived; none while it has not.</param>
/// <param name="IsSettled">Whether it has arrived or never will.</param>
public sealed record PostOnce(string Payload, long? MessageId, bool IsSettled);
