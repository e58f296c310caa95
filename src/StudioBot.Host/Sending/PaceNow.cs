namespace StudioBot.Host.Sending;

/// <summary>Who has to wait at one moment.</summary>
/// <param name="AllRest">Nothing may be sent to anybody.</param>
/// <param name="RestingChats">Chats that may not be written to.</param>
/// <param name="NextOpening">How long until that changes first; none where nobody waits.</param>
internal sealed record PaceNow(bool AllRest, IReadOnlyList<long> RestingChats, TimeSpan? NextOpening);
