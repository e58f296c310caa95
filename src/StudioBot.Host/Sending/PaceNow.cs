namespace StudioBot.Host.Sending;

/// <summary>Who has to wait at one moment.</summary>
/// <param name="Room">How many may be sent, to all together.</param>
/// <param name="RestingChats">Chats that may not be written to.</param>
/// <param name="NextOpening">How long until that changes first; none where nobody waits.</param>
internal sealed record PaceNow(int Room, IReadOnlyList<long> RestingChats, TimeSpan? NextOpening);
