namespace StudioBot.Host.Sending;

/// <summary>The way out to the chat service. Troubles of the way are answers; only being cancelled throws.</summary>
internal interface IWire
{
    /// <summary>Tries once to send a message.</summary>
    Task<Delivery> Send(long chat, Letter letter, CancellationToken cancellation);

    /// <summary>Tries once to put a message in the place of an earlier one.</summary>
    Task<Delivery> Edit(long chat, long message, Letter letter, CancellationToken cancellation);

    /// <summary>Tries once to pin a message without a sound, or to take its pin out.</summary>
    /// <returns>Refused where we may not pin there.</returns>
    Task<Delivery> Pin(long chat, long message, bool isPinned, CancellationToken cancellation);

    /// <summary>Tells that a press has arrived, so that its button stops turning.</summary>
    /// <param name="press">The service's number for the press.</param>
    /// <param name="notice">At most 200 characters to show for a moment; none: nothing.</param>
    /// <param name="cancellation">Gives up.</param>
    /// <returns>Whether it was in time; a late one does no harm.</returns>
    Task<bool> AnswerPress(string press, string? notice, CancellationToken cancellation);
}
