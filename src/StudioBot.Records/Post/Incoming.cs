namespace StudioBot.Records.Post;

/// <summary>An update of the chat service, as it came.</summary>
/// <param name="UpdateId">The service's number for it; it may change when the same event comes again.</param>
/// <param name="ChatId">In which chat.</param>
/// <param name="Kind">What kind of event: message, press.</param>
/// <param name="Raw">The update itself, as it came.</param>
public sealed record Incoming(long UpdateId, long ChatId, string Kind, string Raw)
{
    /// <summary>The message it is, where another update of this kind for it would be the same event; none for an edit,
    /// which may follow another.</summary>
    public long? MessageId { get; init; }

    /// <summary>The service's id of a button press; unique by itself, so the message does not count then.</summary>
    public string? PressId { get; init; }
}
