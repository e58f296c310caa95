using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Learning;

/// <summary>What pieces may share: how, with what and from what they were poured.</summary>
internal static class PieceThings
{
    private const int ManyColours = 6;

    /// <summary>Of this piece, each as it follows its number in a sentence.</summary>
    public static IEnumerable<string> Of(Piece piece)
    {
        yield return $"poured as {piece.Technique}";
        if (piece.Recipe is { } recipe)
        {
            yield return $"by the recipe {recipe}";
        }

        if (piece.Batch is { } batch)
        {
            yield return $"from batch {batch}";
        }

        if (piece.Colours >= ManyColours)
        {
            yield return $"with {ManyColours} colours or more";
        }

        foreach (var part in piece.Parts)
        {
            yield return $"with {part.Material}";
        }
    }
}
