namespace StudioBot.Records.Post;

/// <summary>An update that waits to be answered.</summary>
/// <param name="Id">Its place in the order of arrival.</param>
/// <param name="ChatId">In which chat.</param>
/// <param name="Kind">What kind of event.</param>
/// <param name="Raw">The update itself, JSON.</param>
/// <param name="ReceivedAt">When it was stored, UTC.</param>
/// <param name="Tries">How often answering it broke.</param>
public sealed record InboxRow(
    long Id,
    long ChatId,
    string Kind,
    string Raw,
    DateTimeOffset ReceivedAt,
    int Tries);
