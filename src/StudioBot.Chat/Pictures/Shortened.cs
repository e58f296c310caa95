namespace StudioBot.Chat.Pictures;

/// <summary>Words that must fit into so much width.</summary>
internal static class Shortened
{
    private const string Points = "…";

    /// <summary>The words, or as many of their letters as fit and three points.</summary>
    /// <param name="words">What.</param>
    /// <param name="width">Its room, in the unit of the lettering.</param>
    /// <param name="lettering">How it is set.</param>
    public static string To(string words, float width, Lettering lettering)
    {
        var shown = words;
        for (var kept = words.Length; kept > 0 && lettering.WidthOf(shown) > width; kept--)
        {
            var end = kept - 1 > 0 && char.IsHighSurrogate(words[kept - 2]) ? kept - 2 : kept - 1;
            shown = words[..end].TrimEnd() + Points;
        }

        return shown;
    }
}
