using StudioBot.Chat.Reading;
using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Whole;

/// <summary>Whether the line that a phrase is said back in means the same as what was typed.</summary>
internal static class RoundTrip
{
    /// <summary>What differs; none where nothing does, or where it is neither a question nor a record.</summary>
    public static string? Differs(string words, ChatKind chat = ChatKind.Private) =>
        Said(Sample.Listen(words, chat)) is { } said ? Again(said) : null;

    private static string? Again(Phrase said)
    {
        var line = said.Line;
        if (Said(Sample.Listen(line)) is not { } again)
        {
            return $"“{line}” is not read again: {Sample.Hear(line)}";
        }

        if (again.Form != said.Form)
        {
            return $"“{line}” is read as {again.Form.GetType().Name}, not as {said.Form.GetType().Name}";
        }

        var lost = Meanings(said).Except(Meanings(again)).Select(meaning => $"lost {meaning}");
        var found = Meanings(again).Except(Meanings(said)).Select(meaning => $"found {meaning}");
        var differences = string.Join(", ", lost.Concat(found));
        return differences.Length == 0 ? null : $"“{line}” {differences}";
    }

    private static Phrase? Said(Heard heard) => heard switch
    {
        Heard.Asked asked => asked.Said,
        Heard.Told told => told.Said,
        _ => null,
    };

    private static IEnumerable<string> Meanings(Phrase said) =>
        said.Understood.Select(meaning => $"{meaning.Key}={meaning.Value}");
}
