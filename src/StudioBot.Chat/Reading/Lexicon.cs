namespace StudioBot.Chat.Reading;

/// <summary>The words that a slip in one form may be corrected to.</summary>
internal sealed class Lexicon
{
    private readonly HashSet<string> _known;
    private readonly string[] _words;

    /// <summary>A lexicon of the form's own words and of the studio's names.</summary>
    public Lexicon(IEnumerable<string> words, IEnumerable<string> names)
    {
        _words = [.. words.Concat(names).Distinct()];
        _known = [.. _words.Select(Vocabulary.Stem), .. _words];
    }

    /// <summary>Whether the word, singular or plural, needs no correcting.</summary>
    public bool Holds(string word) => _known.Contains(word) || _known.Contains(Vocabulary.Stem(word));

    /// <summary>The one word that is nearest; none where two different ones are as near.</summary>
    public string? Nearest(string word)
    {
        var nearest = Reading.Nearest.All(word, _words, Reading.Nearest.Reach(word));
        var stems = nearest.Select(Vocabulary.Stem).Distinct();
        return stems.Count() == 1 ? nearest[0] : null;
    }
}
