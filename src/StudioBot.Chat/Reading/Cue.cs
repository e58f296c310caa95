namespace StudioBot.Chat.Reading;

/// <summary>Words by which a sentence means a command without naming it.</summary>
/// <param name="words">All of these must occur, in any order; a slash parts words of which one must.</param>
public sealed class Cue(string words)
{
    private readonly string[][] _needed =
        [.. words.Split(' ').Where(word => word[0] != '{').Select(word => word.Split('/'))];

    private readonly string[] _things =
        [.. words.Split(' ').Where(word => word[0] == '{').Select(word => word.Trim('{', '}'))];

    /// <summary>
    /// How much more it says than its words count: people and a size are a workshop, whatever else is there.
    /// </summary>
    public int Weight { get; init; }

    /// <summary>Whether the word is one of the cue's: in its form it carries no other meaning.</summary>
    internal bool HasWord(string word) => Array.Exists(_needed, choice => choice.Contains(word));

    /// <summary>How many words and things of the sentence fit; 0 where one is lacking.</summary>
    internal int Score(Sightings seen) =>
        Array.TrueForAll(_needed, choice => Array.Exists(choice, seen.HasWord))
        && Array.TrueForAll(_things, seen.HasThing)
            ? 2 * _needed.Length + _things.Length + Weight
            : 0;
}
