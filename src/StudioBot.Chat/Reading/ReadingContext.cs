namespace StudioBot.Chat.Reading;

/// <summary>What reading depends on beside the words: the studio's names, who writes, and when.</summary>
/// <param name="Vocabulary">The studio's names.</param>
/// <param name="Who">Who wrote it.</param>
/// <param name="Local">When, in studio time.</param>
/// <param name="CommandWords">All command words, which no remark may hold.</param>
internal sealed record ReadingContext(
    Vocabulary Vocabulary, Speaker Who, DateTime Local, IReadOnlySet<string> CommandWords)
{
    /// <summary>Whether this material is counted in pieces.</summary>
    public bool IsCounted(string material) => Vocabulary.Counted.Contains(material);

    /// <summary>Whether this material can be one of the colours of a pour: no resin, and nothing that is counted.
    /// </summary>
    public bool IsColour(string material) =>
        !Vocabulary.Counted.Contains(material) && !Vocabulary.Resins.Contains(material);

    /// <summary>Whether this material is poured, so that an ounce of it may be a fluid one.</summary>
    public bool IsLiquid(string material) => Vocabulary.Liquid.Contains(material);
}
