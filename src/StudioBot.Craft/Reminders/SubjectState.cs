namespace StudioBot.Craft.Reminders;

/// <summary>What holds now for the subject of a ping.</summary>
public abstract record SubjectState
{
    private SubjectState()
    {
    }

    /// <summary>As planned: the piece still dries or cures, the level is still low, the week has gone by.</summary>
    /// <param name="Due">When it is to be said, by what is known today.</param>
    public sealed record Standing(DateTimeOffset Due) : SubjectState;

    /// <summary>A recoat window has not been used yet.</summary>
    /// <param name="Due">When it is to be said, by the film's temperatures known today.</param>
    /// <param name="Closes">The earliest it closes.</param>
    public sealed record Window(DateTimeOffset Due, DateTimeOffset Closes) : SubjectState;

    /// <summary>There is nothing left to say.</summary>
    /// <param name="Why">What came between.</param>
    public sealed record Over(WhyUnwanted Why) : SubjectState;
}
