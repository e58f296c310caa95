namespace StudioBot.Chat.Reading.Values;

/// <summary>
/// A fault of a piece in people's own words: <c>cracks</c>, <c>no cells</c>, <c>why is my resin sticky</c>.
/// </summary>
internal sealed class FaultSlot() : Slot<string>("a fault (cracks, no cells, fisheyes, sticky resin …)", "cracks")
{
    internal override int Take(PhraseDraft draft, int at)
    {
        if (draft.Said.Has(this) || draft.Atoms[at].Kind is not (AtomKind.Word or AtomKind.Name))
        {
            return 0;
        }

        var words = draft.Atoms
            .Where(atom => atom.Kind is AtomKind.Word or AtomKind.Name)
            .SelectMany(atom => atom.Lower.Split(' '))
            .ToHashSet();
        if (Best(draft.Vocabulary.Faults, words) is not { } fault)
        {
            return 0;
        }

        draft.Said.Put(this, fault);
        for (var i = at; i < draft.Atoms.Count; i++)
        {
            if (draft.Atoms[i].Kind is AtomKind.Word or AtomKind.Name)
            {
                draft.MarkTaken(i, 1);
            }
        }

        return 1;
    }

    internal override IEnumerable<Meaning> Means(string value) => [new("topic", value)];

    internal override string Say(string value) => value;

    /// <summary>The fault of which the most of these words tell; among those, the one listed first; none where they
    /// tell of none.</summary>
    internal static string? Best(IReadOnlyList<FaultWords> faults, HashSet<string> said)
    {
        var stems = said.Select(Stem).ToHashSet();
        int Hits(IReadOnlyList<string> phrase) => phrase.All(word => stems.Contains(Stem(word))) ? phrase.Count : 0;
        return faults.Select(fault => (fault.Name, Hits: fault.Phrases.Max(Hits)))
            .Where(fault => fault.Hits > 0)
            .OrderByDescending(fault => fault.Hits)
            .Select(fault => fault.Name)
            .FirstOrDefault();
    }

    // crack, cracks, cracked, cracking.
    private static string Stem(string word)
    {
        foreach (var end in (ReadOnlySpan<string>)["ing", "ed", "es", "s", "y"])
        {
            if (word.Length > end.Length + 2 && word.EndsWith(end, StringComparison.Ordinal))
            {
                return word[..^end.Length];
            }
        }

        return word;
    }
}
