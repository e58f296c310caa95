namespace StudioBot.Chat.Reading;

/// <summary>Takes a misspelt word as the nearest one that the form could take there.</summary>
internal static class Speller
{
    // Nobody slips in more words than this and still means a command.
    private const int MostTried = 16;

    private const int LongestName = 4;

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
            var isPurpose = form.Records && i > 0 && result[i - 1].IsWord("to");
            if (result[i].Kind != AtomKind.Word || isPurpose || !MayBeMisspelt(word) || lexicon.Holds(word))
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

    private static bool MayBeMisspelt(string word) => word.Length is >= 3 and <= 30
        && !Fillers.Holds(word)
        && !Fillers.IsVague(word)
        && UnitWords.Of(word) is null;

    // A corrected word may complete a name of several words: lamp blck.
    private static void Replace(List<Atom> atoms, int at, string right, Vocabulary vocabulary)
    {
        var wrong = atoms[at];
        for (var first = Math.Max(0, at - 2); first <= at; first++)
        {
            var words = atoms.Take(first + LongestName)
                .Select((atom, i) => (atom.Kind, Lower: i == at ? right : atom.Lower))
                .Skip(first)
                .TakeWhile(word => word.Kind is AtomKind.Word or AtomKind.Name)
                .Select(word => word.Lower)
                .ToList();
            var (names, length) = vocabulary.Match(words);
            if (length > 0 && first + length > at && words.Count > at - first)
            {
                var last = atoms[first + length - 1];
                var name = string.Join(' ', words.Take(length));
                atoms[first] = new Atom(AtomKind.Name, atoms[first].Start, last.End, name) { Names = names };
                atoms.RemoveRange(first + 1, length - 1);
                return;
            }
        }

        atoms[at] = new Atom(AtomKind.Word, wrong.Start, wrong.End, right) { Glued = wrong.Glued };
    }
}
