namespace StudioBot.Chat.Replies;

/// <summary>What stands on a button.</summary>
internal static class Labels
{
    private const int Longest = 20;

    /// <summary>The words, cut where a button has no room for more.</summary>
    public static string Short(string words) =>
        words.Length <= Longest ? words : words[..(Longest - 1)].TrimEnd() + "…";
}
