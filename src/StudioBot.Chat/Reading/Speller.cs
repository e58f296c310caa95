namespace StudioBot.Chat.Reading;

/// <summary>Takes a misspelt word as the nearest one that the form could take there.</summary>
internal static class Speller
{
    // Nobody slips in more words than this and still means a command.
    private const int MostTried = 16;

    /// <summary>The atoms with slips corrected, and what was corrected to what.</summary>
    public static (List<Atom> Atoms, List<(Atom Wrong, string Right)> Corrected) Correct(
        IReadOnlyList<Atom> atoms, Command form, Vocabulary vocabulary)
    {
        var result = new List<Atom>(atoms);
        List<(Atom, string)> corrected = [];
        var lexicon = vocabulary.LexiconOf(form);
        var tried = 0;
        for (var i = 0; i < result.Count && tried < MostTried; i++)
        {
            var word = result[i].Lower;
            if (result[i].Kind != AtomKind.Word || word.Length is < 3 or > 30 || Fillers.Holds(word) || Fillers.IsVague(word)
                || lexicon.Holds(word) || UnitWords.Of(word) is not null)
            {
                continue;
            }

            tried++;
            if (lexicon.Nearest(word) is { } right)
            {
                corrected.Add((result[i], right));
                Replace(result, i, right, vocabulary);
            }
        }

        return (result, corrected);
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
