using StudioBot.Chat.Reading;

namespace StudioBot.Chat;

/// <summary>How a message was understood, before anything is done about it.</summary>
public abstract record Heard
{
    private Heard()
    {
    }

    /// <summary>The forms that were understood; none where nothing was.</summary>
    internal IReadOnlyList<Command> Forms => this switch
    {
        Asked asked => [asked.Said.Form],
        Told told => [told.Said.Form],
        Doubtful doubtful => [.. doubtful.Said.Select(phrase => phrase.Form)],
        _ => [],
    };

    /// <summary>Not meant for the bot: no answer at all.</summary>
    public sealed record Silence : Heard;

    /// <summary>A question.</summary>
    public sealed record Asked(Phrase Said) : Heard;

    /// <summary>Something to record.</summary>
    public sealed record Told(Phrase Said) : Heard;

    /// <summary>
    /// Something to record whose intent is plain but not its words: nothing is recorded before its author agrees.
    /// </summary>
    /// <param name="Said">What the button would record.</param>
    /// <param name="Why">What was not plain.</param>
    /// <param name="Line">The message the button stands for.</param>
    public sealed record Doubtful(IReadOnlyList<Phrase> Said, Misread Why, string Line) : Heard;

    /// <summary>It can't be read.</summary>
    /// <param name="Command">The command that was meant; empty where none was.</param>
    /// <param name="Trouble">The word, why, and a message that works.</param>
    public sealed record Unread(string Command, Misread Trouble) : Heard;
}
