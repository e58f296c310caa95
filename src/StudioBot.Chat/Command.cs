namespace StudioBot.Chat;

/// <summary>One form of a command: one file, found by <see cref="Catalogue"/>.</summary>
public abstract class Command
{
    private protected Command()
    {
    }

    /// <summary>All there is to say about it.</summary>
    public abstract CommandSheet Sheet { get; }

    /// <summary>Whether it records, or only asks.</summary>
    public abstract bool Records { get; }

    /// <summary>What the words leave wrong between slots that are each right: two shapes, two kinds of unit.</summary>
    internal virtual Reading.Misread? Check(Reading.Phrase said) => null;

    /// <summary>What was understood beside what each slot says, by the keys of <c>studiobot read</c>.</summary>
    internal virtual IEnumerable<Reading.Meaning> AlsoUnderstood(Reading.Phrase said) => [];
}
