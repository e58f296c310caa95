namespace StudioBot.Records.Post;

/// <summary>A message waiting to be sent, claimed by who sends it.</summary>
/// <param name="Id">Its number.</param>
/// <param name="ChatId">To which chat.</param>
/// <param name="Payload">What to send, JSON as it was put.</param>
/// <param name="PutAt">When it was put, UTC.</param>
/// <param name="Tries">The how-manieth try this is; 1 for the first.</param>
/// <param name="MaybeSent">An earlier try may have arrived: the text must say that it may be a repeat.</param>
public sealed record Post(long Id, long ChatId, string Payload, DateTimeOffset PutAt, int Tries, bool MaybeSent);
