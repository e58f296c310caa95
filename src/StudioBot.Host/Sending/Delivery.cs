namespace StudioBot.Host.Sending;

/// <summary>What became of one try to send.</summary>
internal abstract record Delivery
{
    private Delivery()
    {
    }

    /// <summary>It arrived.</summary>
    /// <param name="MessageId">The service's number for it in that chat.</param>
    public sealed record Sent(long MessageId) : Delivery;

    /// <summary>It did not arrive, and trying again can help.</summary>
    /// <param name="After">How long the service asks this chat to be left alone; none: our own delay.</param>
    /// <param name="Why">For the log.</param>
    public sealed record Again(TimeSpan? After, string Why) : Delivery;

    /// <summary>It did not arrive: the chat has another number now.</summary>
    public sealed record Moved(long To) : Delivery;

    /// <summary>Nobody knows whether it arrived: the answer was lost on the way.</summary>
    public sealed record Unclear(string Why) : Delivery;

    /// <summary>This message will never be taken, others may be.</summary>
    public sealed record Refused(string Why) : Delivery;

    /// <summary>Nothing will reach this chat any more, until somebody writes from there.</summary>
    public sealed record Gone(string Why) : Delivery;
}
