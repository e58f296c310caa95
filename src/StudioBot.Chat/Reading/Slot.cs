namespace StudioBot.Chat.Reading;

/// <summary>One thing a command takes, wherever in the line it stands.</summary>
/// <param name="what">As an error says it: a size.</param>
/// <param name="example">One that works: 30cm panel.</param>
public abstract class Slot(string what, string example)
{
    /// <summary>As an error says it: a size.</summary>
    public string What { get; } = what;

    /// <summary>One that works: 30cm panel.</summary>
    public string Example { get; } = example;

    /// <summary>Whether the command can do nothing without it.</summary>
    public bool IsRequired { get; init; }

    /// <summary>Words that a slip may be corrected to.</summary>
    internal virtual IEnumerable<string> Lexicon => [];

    /// <summary>Kinds of names that a slip may be corrected to.</summary>
    internal virtual IReadOnlyCollection<NameKind> NameKinds => [];

    /// <summary>Whether an unknown word is more likely a wrong name for it than a word to pass over.</summary>
    internal virtual bool NamesStrictly => false;

    /// <summary>What it could take, so that a message never expects what would not have worked.</summary>
    internal virtual IReadOnlyCollection<Measure> Measures => [];

    /// <summary>Whether it keeps words as they are, be they well-formed or not.</summary>
    internal virtual bool TakesAnything => false;

    /// <summary>Takes what it can at this atom: how many atoms, 0 where they are not for it.</summary>
    internal abstract int Take(PhraseDraft draft, int at);

    /// <summary>Puts together what was taken in several places, and says what is wrong with it.</summary>
    internal virtual void Finish(PhraseDraft draft)
    {
    }

    /// <summary>What was understood, by key.</summary>
    internal abstract IEnumerable<Meaning> Means(Phrase said);

    /// <summary>The value in words that this slot reads back; none where it is empty.</summary>
    internal abstract string? Say(Phrase said);
}
