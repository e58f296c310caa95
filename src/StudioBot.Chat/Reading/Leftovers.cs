namespace StudioBot.Chat.Reading;

/// <summary>Says what the words mean that no slot took: nothing, a remark, or a slip.</summary>
internal static class Leftovers
{
    /// <summary>Passes over what carries no meaning, keeps a record's remark, and explains the rest.</summary>
    public static void Explain(PhraseDraft draft)
    {
        for (var at = 0; at < draft.Atoms.Count && draft.Slips.Count == 0; at++)
        {
            if (!draft.IsTaken(at))
            {
                Explain(draft, at);
            }
        }

        if (draft.Form.Records && draft.Slips.Count == 0)
        {
            draft.Said.Remark = Remark(draft);
        }
    }

    private static void Explain(PhraseDraft draft, int at)
    {
        var atom = draft.Atoms[at];
        switch (atom.Kind)
        {
            case AtomKind.Number or AtomKind.Quantity or AtomKind.Sizes or AtomKind.Ratio or AtomKind.Fraction:
                Figure(draft, at);
                break;
            case AtomKind.Name when draft.Form.Records && !draft.Form.Sheet.RemarksFreely:
                draft.Slip(at, 1, "has no place here: what about it is missing");
                break;
            case AtomKind.Word:
                Word(draft, at);
                break;
        }
    }

    private static void Figure(PhraseDraft draft, int at)
    {
        var atom = draft.Atoms[at];
        var open = draft.Form.Sheet.Takes.Where(slot => !draft.Said.Has(slot)).ToList();
        var unknown = draft.At(at + 1);
        if (atom.IsNumber && unknown is { Kind: AtomKind.Word } word && !Fillers.Holds(word.Lower) && !IsKnown(draft, word.Lower)
            && open.Any(slot => slot.Measures.Count > 0))
        {
            draft.Slip(at + 1, 1, "is no unit" + Units(open));
            return;
        }

        var wanted = open.FirstOrDefault(slot => slot.IsRequired && slot.Measures.Count > 0)
            ?? open.FirstOrDefault(slot => slot.Measures.Count > 0);
        if (atom.Kind == AtomKind.Quantity && draft.Form.Sheet.Takes.FirstOrDefault(slot => slot.Measures.Contains(atom.Unit!.Measure)) is { } twice
            && draft.Said.Has(twice))
        {
            draft.Slip(at, 1, $"is one too many: {twice.What} stands there already");
        }
        else if (atom.Kind == AtomKind.Ratio && draft.Form.Sheet.Takes.Any(slot => slot is Values.RatioSlot && draft.Said.Has(slot)))
        {
            draft.Slip(at, 1, "is a second ratio: one mixture has one");
        }
        else if (atom.Kind == AtomKind.Quantity && atom.Unit!.Measure == Measure.Cup)
        {
            draft.Slip(at, 1, "says too little: cups differ, so give ml");
        }
        else if (wanted is not null && atom.Kind is AtomKind.Quantity or AtomKind.Sizes)
        {
            draft.Slip(at, 1, $"is {Kind(atom)} where {wanted.What} is needed");
        }
        else if (wanted is not null && atom.IsNumber)
        {
            draft.Slip(at, 1, "has no unit" + Units(open));
        }
        else
        {
            draft.Slip(at, 1, "has no place here");
        }
    }

    private static void Word(PhraseDraft draft, int at)
    {
        var atom = draft.Atoms[at];
        if (Fillers.Holds(atom.Lower))
        {
            return;
        }

        var open = draft.Form.Sheet.Takes.FirstOrDefault(slot => !draft.Said.Has(slot) && slot.NameKinds.Count > 0 && slot.NamesStrictly);
        if (open is not null && (open.IsRequired || !FollowsPreposition(draft, at)))
        {
            draft.Slips.Add(new Slip(atom.Start, draft.Chunk(at), $"is no {Without(open.What)} here"));
        }
        else if (draft.Form.Records && !draft.Form.Sheet.RemarksFreely && IsKnown(draft, atom.Lower))
        {
            draft.Slips.Add(new Slip(atom.Start, draft.Chunk(OddMark(draft, at) ?? at), "has no place here"));
        }
        else if (!draft.Form.Records)
        {
            draft.Said.NoteList.Add($"“{PhraseDraft.Short(atom.Lower)}” passed over");
        }
    }

    // white'; DROP TABLE stock: the run of stray words begins at a mark that nobody types between words.
    private static int? OddMark(PhraseDraft draft, int at)
    {
        for (var before = at; before >= 0 && !draft.IsTaken(before); before--)
        {
            if (draft.Atoms[before] is { Kind: AtomKind.Mark, Glued: true } mark && !IsPunctuation(mark.Lower))
            {
                return before;
            }
        }

        return null;
    }

    private static bool FollowsPreposition(PhraseDraft draft, int at)
    {
        while (--at >= 0 && draft.Atoms[at].Kind == AtomKind.Word)
        {
            if (draft.Atoms[at].IsWord("for", "from", "because", "before", "after", "until", "in", "at", "to"))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsKnown(PhraseDraft draft, string word) =>
        draft.Context.CommandWords.Contains(word) || draft.Vocabulary.Match([word]).Words > 0;

    // The runs of words that nothing took, as typed, where they say anything.
    private static string Remark(PhraseDraft draft)
    {
        List<string> runs = [];
        for (var first = 0; first < draft.Atoms.Count; first++)
        {
            var last = first;
            while (last < draft.Atoms.Count && !draft.IsTaken(last))
            {
                last++;
            }

            var run = Enumerable.Range(first, last - first).SkipWhile(at => draft.Atoms[at].Kind == AtomKind.Mark && IsPunctuation(draft.Atoms[at].Lower)).ToList();
            if (run.Any(at => Says(draft.Atoms[at])))
            {
                runs.Add(last == draft.Atoms.Count ? draft.Rest(run[0]) : draft.Typed(run[0], run.Count));
            }

            first = last;
        }

        return string.Join(' ', runs);
    }

    private static bool IsPunctuation(string mark) => mark is "," or "." or ":" or "-" or ";" or "/" or "+" or "&" or "(" or ")" or "!" or "#";

    private static bool Says(Atom atom) => atom.Kind == AtomKind.Mark ? !IsPunctuation(atom.Lower) : atom.Kind == AtomKind.Word && !Fillers.Holds(atom.Lower);

    private static string Kind(Atom atom) => atom.Kind == AtomKind.Sizes ? "a size" : atom.Unit!.Measure switch
    {
        Measure.Length => "a length",
        Measure.Area => "an area",
        Measure.Volume => "a volume",
        Measure.Mass or Measure.Ounce => "a mass",
        Measure.Temperature or Measure.Degrees => "a temperature",
        Measure.Percent => "a share",
        Measure.Time => "a time",
        Measure.Turns => "a speed",
        Measure.Money => "a sum of money",
        Measure.Clock => "a time of day",
        _ => "something else",
    };

    private static string Units(IReadOnlyList<Slot> open)
    {
        var measures = open.SelectMany(slot => slot.Measures).Distinct().ToList();
        return measures switch
        {
            _ when measures.Contains(Measure.Volume) && measures.Contains(Measure.Mass) => ": ml or g?",
            _ when measures.Contains(Measure.Volume) => ": ml?",
            _ when measures.Contains(Measure.Mass) => ": g?",
            _ when measures.Contains(Measure.Length) => ": cm, mm or in?",
            _ => "",
        };
    }

    private static string Without(string what) =>
        what.StartsWith("a ", StringComparison.Ordinal) ? what[2..] : what.StartsWith("an ", StringComparison.Ordinal) ? what[3..] : what;
}
