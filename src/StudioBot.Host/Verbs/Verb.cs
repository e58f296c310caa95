namespace StudioBot.Host.Verbs;

/// <summary>One thing the program does.</summary>
internal abstract class Verb
{
    /// <summary>The word; empty for what happens without one.</summary>
    public abstract string Word { get; }

    /// <summary>How it is called, without the program's name.</summary>
    public abstract string Usage { get; }

    /// <summary>What it does, in one line.</summary>
    public abstract string Says { get; }

    /// <summary>The options it knows beside <c>--data</c>.</summary>
    public virtual IReadOnlyList<string> Options => [];

    /// <summary>Whether <c>--data</c> may stand there more than once.</summary>
    public virtual bool TakesSeveralFolders => false;

    /// <summary>The fewest and the most words it takes.</summary>
    public virtual (int Fewest, int Most) Takes => (0, 0);

    /// <summary>Does it.</summary>
    /// <param name="said">What stands behind the word; it fits <see cref="Options"/> and <see cref="Takes"/>.</param>
    /// <param name="place">Where.</param>
    /// <param name="cancellation">Ends it.</param>
    public abstract Task<ExitCode> Run(Invocation said, Workplace place, CancellationToken cancellation);
}
