namespace StudioBot.Records.Acts;

/// <summary>What came of taking an act back.</summary>
public abstract record Undone
{
    private Undone()
    {
    }

    /// <summary>The opposite of its lines is booked, under an act of its own.</summary>
    /// <param name="What">The act that was taken back.</param>
    /// <param name="By">The act that did it.</param>
    public sealed record Done(Act What, Act By) : Undone
    {
        /// <summary>What the studio had written by itself on top of it, taken back too.</summary>
        public IReadOnlyList<Act> Along { get; init; } = [];
    }

    /// <summary>Not taken back, nothing booked: later acts rest on it.</summary>
    /// <param name="Later">In their order; empty where a row it changed was changed since by no act.</param>
    public sealed record RestsOn(IReadOnlyList<Act> Later) : Undone;

    /// <summary>It was taken back before.</summary>
    /// <param name="By">The act that did it.</param>
    public sealed record Before(Act By) : Undone;

    /// <summary>An undo is not undone, nor is the opening of the books.</summary>
    public sealed record NotOffered : Undone;

    /// <summary>There is no such act.</summary>
    public sealed record Unknown : Undone;
}
