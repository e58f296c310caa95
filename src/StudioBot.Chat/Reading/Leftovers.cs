namespace StudioBot.Chat.Reading;

/// <summary>Says what the words mean that no slot took: nothing, a remark, or a slip.</summary>
internal static class Leftovers
{
    /// <summary>Passes over what carries no meaning, keeps a record's remark, and explains the rest.</summary>
    public static void Explain(PhraseDraft draft)
    {
        if (draft.Form.Records && !draft.Form.Sheet.RemarksFreely && draft.Slips.Count == 0)
        {
            Unknowns.Explain(draft);
        }

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

    // The most telling reason first.
    private static void Figure(PhraseDraft draft, int at)
    {
        if (IsBeforeUnknownUnit(draft, at))
        {
            draft.Slip(at + 1, 1, "is no unit" + Units(draft));
        }
        else
        {
            draft.Slip(at, 1, Twice(draft, draft.Atoms[at]) ?? Unfit(draft, draft.Atoms[at]));
        }
    }

    private static IEnumerable<Slot> Open(PhraseDraft draft) =>
        draft.Form.Sheet.Takes.Where(slot => !draft.Said.Has(slot) && slot.Measures.Count > 0);

    // 20 zorks.
    private static bool IsBeforeUnknownUnit(PhraseDraft draft, int at) => draft.Atoms[at].IsNumber
        && draft.At(at + 1) is { Kind: AtomKind.Word } word
        && !Fillers.Holds(word.Lower)
        && !IsKnown(draft, word.Lower)
        && Open(draft).Any();

    // A second figure of a kind that stands there already.
    private static string? Twice(PhraseDraft draft, Atom atom)
    {
        var slots = draft.Form.Sheet.Takes;
        if (atom.Kind == AtomKind.Quantity)
        {
            var first = slots.FirstOrDefault(slot => slot.Measures.Contains(atom.Unit!.Measure));
            return first is not null && draft.Said.Has(first)
                ? $"is one too many: {first.What} stands there already"
                : null;
        }

        return atom.Kind == AtomKind.Ratio && slots.Any(slot => slot is Values.RatioSlot && draft.Said.Has(slot))
            ? "is a second ratio: one mixture has one"
            : null;
    }

    private static string Unfit(PhraseDraft draft, Atom atom)
    {
        var wanted = Open(draft).FirstOrDefault(slot => slot.IsRequired) ?? Open(draft).FirstOrDefault();
        return atom.Kind switch
        {
            AtomKind.Quantity when atom.Unit!.Measure == Measure.Cup => "says too little: cups differ, so give ml",
            AtomKind.Quantity or AtomKind.Sizes when wanted is not null =>
                $"is {Kind(atom)} where {wanted.What} is needed",
            AtomKind.Number when wanted is not null => "has no unit" + Units(draft),
            _ => "has no place here",
        };
    }

    private static void Word(PhraseDraft draft, int at)
    {
        var atom = draft.Atoms[at];
        var isCue = draft.Form.Sheet.Cues.Any(cue => cue.HasWord(atom.Lower));
        if (isCue || Fillers.Holds(atom.Lower))
        {
            return;
        }

        var open = draft.Form.Sheet.Takes.FirstOrDefault(slot => slot.NamesStrictly && !draft.Said.Has(slot));
        if (open is not null && (open.IsRequired || !FollowsPreposition(draft, at)))
        {
            draft.Slips.Add(new Slip(atom.Start, draft.Chunk(at), $"is no {Without(open.What)} here"));
        }
        else if (draft.Form.Records && !draft.Form.Sheet.RemarksFreely
            && IsKnown(draft, atom.Lower) && !IsPurpose(draft, at))
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
            if (draft.Atoms[before] is { Kind: AtomKind.Mark, Glued: true } mark && !IsPunctuation(mark))
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

    // For the workshop: what it was for, not another command.
    private static bool IsPurpose(PhraseDraft draft, int at) =>
        draft.At(at - 1)?.IsWord("the", "a", "our", "my") == true && draft.At(at - 2)?.IsWord("for") == true;

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

            var run = Enumerable.Range(first, last - first).SkipWhile(at => IsPunctuation(draft.Atoms[at])).ToList();
            if (run.Any(at => Says(draft.Atoms[at])))
            {
                runs.Add(last == draft.Atoms.Count ? draft.Rest(run[0]) : draft.Typed(run[0], run.Count));
            }

            first = last;
        }

        return string.Join(' ', runs);
    }

    private static bool IsPunctuation(Atom atom) => atom.Kind == AtomKind.Mark
        && atom.Lower is "," or "." or ":" or "-" or ";" or "/" or "+" or "&" or "(" or ")" or "!" or "#";

    private static bool Says(Atom atom) => atom.Kind switch
    {
        AtomKind.Mark => !IsPunctuation(atom),
        AtomKind.Word => !Fillers.Holds(atom.Lower),
        _ => false,
    };

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

    private static string Units(PhraseDraft draft)
    {
        var nearest = Open(draft).FirstOrDefault(slot => slot.IsRequired) ?? Open(draft).FirstOrDefault();
        var measures = nearest?.Measures ?? [];
        return measures switch
        {
            _ when measures.Contains(Measure.Volume) && measures.Contains(Measure.Mass) => ": ml or g?",
            _ when measures.Contains(Measure.Volume) => ": ml?",
            _ when measures.Contains(Measure.Mass) => ": g?",
            _ when measures.Contains(Measure.Length) => ": cm, mm or in?",
            _ => "",
        };
    }

    private static string Without(string what) => what switch
    {
        _ when what.StartsWith("a ", StringComparison.Ordinal) => what[2..],
        _ when what.StartsWith("an ", StringComparison.Ordinal) => what[3..],
        _ => what,
    };
}
