namespace StudioBot.Craft.Reminders;

/// <summary>A ping that is to be said now.</summary>
public sealed record OutgoingPing
{
    /// <summary>A ping with its verdict.</summary>
    /// <param name="planned">The ping.</param>
    /// <param name="verdict">To send, to send late, or too late.</param>
    /// <param name="session">The pour or coat it comes from; empty: none.</param>
    /// <param name="place">Where its subject lies; empty: nowhere.</param>
    /// <exception cref="ArgumentException">The verdict says nothing to the chat.</exception>
    public OutgoingPing(PlannedPing planned, PingVerdict verdict, string session, string place)
    {
        if (verdict is not (PingVerdict.Send or PingVerdict.SendLate or PingVerdict.TooLate))
        {
            throw new ArgumentException("Only what is said goes out.", nameof(verdict));
        }

        (Planned, Verdict, Session, Place) = (planned, verdict, session, place);
    }

    /// <summary>The ping.</summary>
    public PlannedPing Planned { get; }

    /// <summary>How it is said.</summary>
    public PingVerdict Verdict { get; }

    /// <summary>The pour or coat it comes from.</summary>
    public string Session { get; }

    /// <summary>Where its subject lies.</summary>
    public string Place { get; }

    /// <summary>It missed its hour and belongs in the digest.</summary>
    public bool IsTooLate => Verdict is PingVerdict.TooLate;
}
