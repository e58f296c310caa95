namespace StudioBot.Chat.Reading;

/// <summary>
/// Reads the words behind a command into the slots of one of its forms. Order is free: at each atom the slots are
/// asked in turn whether it is for them; what nobody takes, and what stays empty, is explained.
/// </summary>
internal static class PhraseReader
{
    /// <summary>
    /// The draft of a phrase: without slips it can be answered or booked, with doubts it must be agreed to first.
    /// </summary>
    /// <param name="form">The form whose slots are to be filled.</param>
    /// <param name="text">The whole message as typed, in which the atoms keep their places.</param>
    /// <param name="typed">The part of it that belongs to this phrase.</param>
    /// <param name="atoms">What stands behind the command word.</param>
    /// <param name="context">Names, person and time.</param>
    public static PhraseDraft Read(
        Command form, string text, string typed, IReadOnlyList<Atom> atoms, ReadingContext context)
    {
        var (spelt, corrected) = Speller.Correct(atoms, form, context.Vocabulary);
        var draft = new PhraseDraft(form, text, typed, spelt, context);
        Note(draft, text, corrected);
        Fill(draft);
        foreach (var slot in form.Sheet.Takes)
        {
            slot.Finish(draft);
        }

        Leftovers.Explain(draft);
        Required(draft);
        if (draft.Slips.Count == 0 && form.Check(draft.Said) is { } wrong)
        {
            draft.Slips.Add(new Slip(0, wrong.Word, wrong.Why, wrong.Try));
        }

        return draft;
    }

    // A question is answered as corrected and says so; a record waits for its author.
    private static void Note(PhraseDraft draft, string text, List<(Atom Wrong, string Right)> corrected)
    {
        foreach (var (wrong, right) in corrected)
        {
            draft.Said.NoteList.Add($"“{wrong.Lower}” taken as {right}");
            if (draft.Form.Records)
            {
                var word = text[wrong.Start..wrong.End];
                draft.Doubts.Add(new Slip(wrong.Start, word, $"is not a word here; {right} is the nearest"));
            }
        }
    }

    private static void Fill(PhraseDraft draft)
    {
        var slots = draft.Form.Sheet.Takes;
        for (var at = 0; at < draft.Atoms.Count;)
        {
            var taken = draft.IsTaken(at) ? 1 : 0;
            for (var i = 0; i < slots.Count && taken == 0; i++)
            {
                if (Flaws.In(draft, at) is null || slots[i].TakesAnything)
                {
                    taken = slots[i].Take(draft, at);
                }
            }

            if (taken == 0 && Flaws.In(draft, at) is { } why)
            {
                draft.Slips.Add(new Slip(draft.Atoms[at].Start, FlawedWord(draft, at), why));
                taken = 1;
            }

            draft.MarkTaken(at, taken);
            at += Math.Max(taken, 1);
        }
    }

    private static string FlawedWord(PhraseDraft draft, int at) =>
        draft.Atoms[at] is { Kind: AtomKind.Number, Flaw: NumberFlaw.NotANumber } ? draft.Chunk(at) : draft.Typed(at);

    private static void Required(PhraseDraft draft)
    {
        if (draft.Slips.Count > 0)
        {
            return;
        }

        foreach (var slot in draft.Form.Sheet.Takes)
        {
            if (slot.IsRequired && !draft.Said.Has(slot))
            {
                draft.Missing($"{slot.What} is missing");
                return;
            }
        }
    }
}
