namespace StudioBot.Chat.Reading;

/// <summary>Takes a misspelt word as the nearest one that the form could take there.</summary>
internal static class Speller
{
    /// <summary>The atoms with slips corrected, and what was corrected to what.</summary>
    public static (List<Atom> Atoms, List<(Atom Wrong, string Right)> Corrected) Correct(
        IReadOnlyList<Atom> atoms, Command form, Vocabulary vocabulary)
    {
        var result = new List<Atom>(atoms);
        List<(Atom, string)> corrected = [];
        HashSet<string>? lexicon = null;
        HashSet<string>? names = null;
        for (var i = 0; i < result.Count; i++)
        {
            if (result[i].Kind != AtomKind.Word || result[i].Lower.Length < 3 || Fillers.Holds(result[i].Lower) || Fillers.IsVague(result[i].Lower))
            {
                continue;
            }

            names ??= [.. vocabulary.WordsOf([.. form.Sheet.Takes.SelectMany(slot => slot.NameKinds)]).Select(Vocabulary.Stem)];
            lexicon ??= [.. form.Sheet.Takes.SelectMany(slot => slot.Lexicon)];
            if (lexicon.Contains(result[i].Lower) || names.Contains(Vocabulary.Stem(result[i].Lower))
                || UnitWords.Of(result[i].Lower) is not null
                || Right(result[i].Lower, lexicon.Concat(names)) is not { } right)
            {
                continue;
            }

            corrected.Add((result[i], right));
            Replace(result, i, right, vocabulary);
        }

        return (result, corrected);
    }

    // Singular and plural are one word; two different words as near are none.
    private static string? Right(string word, IEnumerable<string> known)
    {
        var nearest = Nearest.All(word, known, Nearest.Reach(word));
        return nearest.Count > 0 && nearest.All(one => Vocabulary.Stem(one) == Vocabulary.Stem(nearest[0])) ? nearest[0] : null;
    }

    // A corrected word may complete a name of several words: lamp blck.
    private static void Replace(List<Atom> atoms, int at, string right, Vocabulary vocabulary)
    {
        var wrong = atoms[at];
        for (var first = Math.Max(0, at - 2); first <= at; first++)
        {
            List<string> words = [];
            for (var i = first; i < atoms.Count && i < first + 4 && atoms[i].Kind is AtomKind.Word or AtomKind.Name; i++)
            {
                words.Add(i == at ? right : atoms[i].Lower);
            }

            var (names, length) = vocabulary.Match(words);
            if (length > 0 && first + length > at && words.Count > at - first)
            {
                var last = atoms[first + length - 1];
                atoms[first] = new Atom(AtomKind.Name, atoms[first].Start, last.End, string.Join(' ', words.Take(length))) { Names = names };
                atoms.RemoveRange(first + 1, length - 1);
                return;
            }
        }

        atoms[at] = new Atom(AtomKind.Word, wrong.Start, wrong.End, right) { Glued = wrong.Glued };
    }
}
