namespace StudioBot.Chat.Reading.Values;

/// <summary>Words before what somebody wants to read, and has not read yet.</summary>
internal static class WishWords
{
    /// <summary>Want 22 s, need 2 s.</summary>
    public static readonly IReadOnlyList<string> All =
        ["want", "need", "wanted", "target", "aim", "goal", "wants", "needs", "needed"];
}
