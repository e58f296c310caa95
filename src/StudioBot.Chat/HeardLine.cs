using StudioBot.Chat.Reading;

namespace StudioBot.Chat;

/// <summary>How a message was understood, as one line for a machine.</summary>
/// <param name="Kind">ask, write, confirm, error or ignore.</param>
/// <param name="Command">The command's word; two joined by a plus; empty where none was meant.</param>
/// <param name="Understood">Under each command's word, what was understood by key.</param>
/// <param name="Error">What could not be read; none where all could.</param>
public sealed record HeardLine(
    string Kind,
    string Command,
    IReadOnlyDictionary<string, IReadOnlyList<Meaning>> Understood,
    Misread? Error)
{
    private static readonly Dictionary<string, IReadOnlyList<Meaning>> Nothing = [];

    /// <summary>The line of what was heard.</summary>
    public static HeardLine From(Heard heard) => heard switch
    {
        Heard.Asked asked => Of("ask", [asked.Said]),
        Heard.Told told => Of("write", [told.Said]),
        Heard.Doubtful doubtful => Of("confirm", doubtful.Said),
        Heard.Unread unread => new("error", unread.Command, Nothing, unread.Trouble),
        _ => new("ignore", "", Nothing, null),
    };

    private static HeardLine Of(string kind, IReadOnlyList<Phrase> said) => new(
        kind,
        string.Join('+', said.Select(phrase => phrase.Form.Sheet.Word)),
        said.DistinctBy(phrase => phrase.Form.Sheet.Word)
            .ToDictionary(phrase => phrase.Form.Sheet.Word, phrase => phrase.Understood),
        null);
}
