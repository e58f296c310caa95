namespace StudioBot.Chat.Asking;

/// <summary>Turns the short reasons of the arithmetic into sentences.</summary>
internal static class Sentences
{
    /// <summary>With a capital first and a full stop last.</summary>
    public static string Of(string reason) =>
        reason.Length == 0 || reason[^1] is '.' or '?' or '!' ? Capital(reason) : Capital(reason) + ".";

    /// <summary>With a capital first.</summary>
    public static string Capital(string words) =>
        words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];

    /// <summary>Said last where an answer rests on the invented studio's records; empty in a real one.</summary>
    public static string Invented(Studio studio) => studio.IsSample ? " (Invented studio.)" : "";

    /// <summary>One, two and three.</summary>
    public static string And(IReadOnlyList<string> names) => names.Count < 2
        ? string.Concat(names)
        : string.Join(", ", names.Take(names.Count - 1)) + " and " + names[^1];
}
