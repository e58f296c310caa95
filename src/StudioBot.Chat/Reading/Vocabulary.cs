using System.Collections.Concurrent;
using StudioBot.Craft.Units;

namespace StudioBot.Chat.Reading;

/// <summary>The words that one studio has given a meaning to: its names, labels and numbers.</summary>
public sealed class Vocabulary
{
    private readonly Dictionary<string, List<Entry>> _byFirstWord = [];
    private readonly Dictionary<string, string> _lots;
    private readonly Dictionary<string, string> _lotsUnhyphened;
    private readonly List<(string Word, Named Named)> _words = [];
    private readonly ConcurrentDictionary<Command, Lexicon> _lexicons = new();

    /// <summary>A vocabulary of these names.</summary>
    internal Vocabulary(
        IEnumerable<(string Word, Named Named)> names,
        IEnumerable<string> lots,
        IEnumerable<int> pieces,
        IEnumerable<int> batches,
        IEnumerable<string> shelves,
        IEnumerable<FaultWords> faults,
        IEnumerable<string> counted,
        IEnumerable<string> liquid,
        IEnumerable<string> resins,
        IEnumerable<string> ratiosByMass)
    {
        foreach (var (word, named) in names)
        {
            var words = word.ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries);
            var stems = Array.ConvertAll(words, Stem);
            if (!_byFirstWord.TryGetValue(stems[0], out var entries))
            {
                _byFirstWord[stems[0]] = entries = [];
            }

            entries.Add(new Entry(stems, named));
            _words.AddRange(words.Select(single => (single, named)));
        }

        foreach (var entries in _byFirstWord.Values)
        {
            entries.Sort((left, right) => right.Stems.Length.CompareTo(left.Stems.Length));
        }

        _lots = lots.ToDictionary(label => label, StringComparer.OrdinalIgnoreCase);

        // A1-11 and A11-1 have to be typed with their hyphens.
        _lotsUnhyphened = _lots.Values.GroupBy(Unhyphened).Where(alike => alike.Count() == 1)
            .ToDictionary(alike => alike.Key, alike => alike.Single());
        Pieces = pieces.ToHashSet();
        Batches = batches.ToHashSet();
        Shelves = shelves.ToHashSet(StringComparer.OrdinalIgnoreCase);
        Faults = faults.ToList();
        Counted = counted.ToHashSet();
        Liquid = liquid.ToHashSet();
        Resins = resins.ToHashSet();
        RatiosByMass = ratiosByMass.ToHashSet();
    }

    /// <summary>Of each member whose whole name is others' first name: those others.</summary>
    internal IReadOnlyDictionary<string, IReadOnlyList<string>> Namesakes { get; init; } =
        new Dictionary<string, IReadOnlyList<string>>();

    /// <summary>The numbers of all pieces.</summary>
    internal IReadOnlySet<int> Pieces { get; }

    /// <summary>What this studio's scoop holds.</summary>
    internal Volume Scoop { get; init; } = Volume.FromMillilitres(UnitWords.Of("scoop")!.Factor);

    /// <summary>How those are called who left, by their names in lower case.</summary>
    internal IReadOnlyDictionary<string, string> Former { get; init; } = new Dictionary<string, string>();

    /// <summary>The numbers that wait for their pours.</summary>
    internal IReadOnlySet<int> Reserved { get; init; } = new HashSet<int>();

    /// <summary>The numbers of all batches.</summary>
    internal IReadOnlySet<int> Batches { get; }

    /// <summary>The labels of all shelves.</summary>
    internal IReadOnlySet<string> Shelves { get; }

    /// <summary>The faults whose causes are known.</summary>
    internal IReadOnlyList<FaultWords> Faults { get; }

    /// <summary>The materials that are counted in pieces.</summary>
    internal IReadOnlySet<string> Counted { get; }

    /// <summary>The ratios that the known resins have by mass and none has by volume.</summary>
    internal IReadOnlySet<string> RatiosByMass { get; }

    /// <summary>The two parts of a resin.</summary>
    internal IReadOnlySet<string> Resins { get; }

    /// <summary>The materials that are poured.</summary>
    internal IReadOnlySet<string> Liquid { get; }

    /// <summary>The words that a slip in this form may be corrected to; gathered once.</summary>
    internal Lexicon LexiconOf(Command form) => _lexicons.GetOrAdd(form, one => new Lexicon(
        one.Sheet.Takes.SelectMany(slot => slot.Lexicon),
        WordsOf([.. one.Sheet.Takes.SelectMany(slot => slot.NameKinds)])));

    /// <summary>The longest name that begins with the first of these words, and how many words it takes.</summary>
    internal (IReadOnlyList<Named> Names, int Words) Match(IReadOnlyList<string> words)
    {
        if (words.Count == 0 || !_byFirstWord.TryGetValue(Stem(words[0]), out var entries))
        {
            return ([], 0);
        }

        List<Named> found = [];
        var length = 0;
        foreach (var entry in entries)
        {
            if (entry.Stems.Length >= length && entry.Stems.Length <= words.Count && Fits(entry.Stems, words))
            {
                length = entry.Stems.Length;
                found.Add(entry.Named);
            }
        }

        return (found, length);
    }

    /// <summary>The lot whose label this is, however its hyphen and case are typed; none where there is none.</summary>
    internal string? Lot(string typed) =>
        _lots.GetValueOrDefault(typed) ?? _lotsUnhyphened.GetValueOrDefault(Unhyphened(typed));

    /// <summary>The label of every lot.</summary>
    internal IEnumerable<string> Lots => _lots.Values;

    /// <summary>Every single word that stands in a name of one of these kinds.</summary>
    internal IEnumerable<string> WordsOf(IReadOnlyCollection<NameKind> kinds) =>
        _words.Where(entry => kinds.Contains(entry.Named.Kind)).Select(entry => entry.Word);

    /// <summary>All names of this kind in which the word stands: mica stands in four.</summary>
    internal IReadOnlyList<string> Holding(NameKind kind, string word) =>
        _words.Where(entry => entry.Named.Kind == kind && Stem(entry.Word) == Stem(word))
            .Select(entry => entry.Named.Name).Distinct().ToList();

    /// <summary>Singular and plural alike.</summary>
    internal static string Stem(string word) =>
        word.Length > 3 && word[^1] == 's' && word[^2] != 's' ? word[..^1] : word;

    private static string Unhyphened(string label) =>
        label.Replace("-", "", StringComparison.Ordinal).ToLowerInvariant();

    private static bool Fits(string[] stems, IReadOnlyList<string> words)
    {
        for (var i = 0; i < stems.Length; i++)
        {
            if (stems[i] != Stem(words[i]))
            {
                return false;
            }
        }

        return true;
    }

    private sealed record Entry(string[] Stems, Named Named);
}
