using StudioBot.Chat.Reading;

namespace StudioBot.Chat.Replies;

/// <summary>What stands on a button.</summary>
internal static class Labels
{
    private const int Longest = 20;

    /// <summary>The words, cut where a button has no room for more.</summary>
    public static string Short(string words) => Cut(words, Longest);

    /// <summary>The words, of which so many letters are shown at most; never half a character.</summary>
    public static string Cut(string words, int longest) => words.Length <= longest ? words
        : words[..Characters.Before(words, Math.Max(longest - 1, 0))].TrimEnd() + "…";
}
