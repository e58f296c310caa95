using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Reading;

/// <summary>Words in a record that stand where a name stands, and name nothing here: no remark to pass over.</summary>
internal static class Unknowns
{
    // A longer run of words behind a comma is a remark.
    private const int LongestName = 3;

    /// <summary>The first of them is a slip.</summary>
    public static void Explain(PhraseDraft draft)
    {
        for (var at = 0; at < draft.Atoms.Count && draft.Slips.Count == 0; at++)
        {
            if (IsStray(draft, at))
            {
                Lot(draft, at);
                Person(draft, at);
                InRoom(draft, at);
                Material(draft, at);
            }
        }
    }

    // Mix medium 400 ml lot W-1: what is drawn is not what was meant.
    private static void Lot(PhraseDraft draft, int at)
    {
        if (draft.Slips.Count == 0
            && draft.At(at - 1)?.IsWord("lot", "lots") == true
            && draft.Vocabulary.Lot(draft.Verbatim(at)) is not null)
        {
            draft.Doubt(at - 1, 2, $"is passed over: {draft.Form.Sheet.Word} takes no lot by name");
        }
    }

    // For Tom: whoever is named so is no purpose, and the record is not the author's.
    private static void Person(PhraseDraft draft, int at)
    {
        if (draft.Slips.Count > 0
            || draft.Said.Has(RecordSlots.For)
            || !draft.Form.Sheet.Takes.Contains(RecordSlots.For)
            || draft.At(at - 1)?.IsWord("for", "by") != true)
        {
            return;
        }

        var isPurpose = draft.At(at + 1) is { Kind: AtomKind.Word } next && !IsCapital(draft, next);
        if (draft.Vocabulary.Former.ContainsKey(draft.Atoms[at].Lower)
            || (IsCapital(draft, draft.Atoms[at]) && !isPurpose))
        {
            draft.Slip(at, 1, "is no member here");
        }
    }

    // Who types in capitals only says nothing by them.
    private static bool IsCapital(PhraseDraft draft, Atom atom) =>
        char.IsUpper(draft.Text[atom.Start]) && draft.Text.Any(char.IsLower);

    // Room cellar 23C 45 %, room 23C 45 % in the cellar.
    private static void InRoom(PhraseDraft draft, int at)
    {
        var slot = draft.Form.Sheet.Takes.OfType<NameSlot>()
            .FirstOrDefault(one => one.NamesAnyWord && !draft.Said.Has(one));
        if (slot is null || draft.Slips.Count > 0 || !(StandsFirst(draft, at) || StandsAlone(draft, at)))
        {
            return;
        }

        var (word, known) = (draft.Typed(at), draft.Vocabulary.WordsOf(slot.NameKinds).LastOrDefault());
        var line = draft.Text[..draft.Atoms[at].Start] + known + draft.Text[draft.Atoms[at].End..];
        draft.Slips.Add(new Slip(
            draft.Atoms[at].Start, word, $"is no {slot.What["a ".Length..]} here", known is null ? null : line));
    }

    // Nothing that was understood stands before it.
    private static bool StandsFirst(PhraseDraft draft, int at) =>
        !Enumerable.Range(0, at).Any(before => draft.IsTaken(before));

    // The only word behind, or the one behind in.
    private static bool StandsAlone(PhraseDraft draft, int at)
    {
        var before = at - 1;
        while (draft.At(before)?.IsWord("the", "our", "my") == true)
        {
            before--;
        }

        return draft.At(at + 1) is not { Kind: AtomKind.Word }
            && ((before >= 0 && draft.IsTaken(before)) || draft.At(before)?.IsWord("in", "at") == true);
    }

    private static void Material(PhraseDraft draft, int at)
    {
        if (draft.Slips.Count > 0 || !Lists(draft))
        {
            return;
        }

        var last = at;
        while (IsStray(draft, last + 1))
        {
            last++;
        }

        var isName = last - at < LongestName
            && draft.At(last + 1) is not { Kind: AtomKind.Word }
            && (StandsInList(draft, at) || StandsBehindAmount(draft, at));
        if (isName)
        {
            draft.Slip(at, last - at + 1, "is no material of this studio");
        }
    }

    private static bool Lists(PhraseDraft draft) => draft.Form.Sheet.Takes
        .Any(slot => slot is ItemsSlot or ColoursSlot && draft.Said.Has(slot) || IsOfPour(draft, slot));

    private static bool IsOfPour(PhraseDraft draft, Slot slot) => slot is CupPartsSlot { NeedsUnit: true }
        && draft.Form.Sheet.Takes.Any(other => other is ColoursSlot);

    // White, cola.
    private static bool StandsInList(PhraseDraft draft, int at) => at > 1
        && draft.Atoms[at - 1] is { Kind: AtomKind.NewLine } or { Lower: "," or "+" or "&" or ";" or "and" or "plus" }
        && draft.Atoms[at - 2].NameOf(NameKind.Material) is not null;

    // 20 ml cola, in a pour: not what was mixed in all, nor what was left of it.
    private static bool StandsBehindAmount(PhraseDraft draft, int at)
    {
        var before = at > 0 && draft.Atoms[at - 1].IsWord("of") ? at - 2 : at - 1;
        return before > 0
            && draft.Form.Sheet.Takes.Any(slot => IsOfPour(draft, slot))
            && draft.Atoms[before] is { Kind: AtomKind.Quantity, Unit.Measure: Measure.Volume or Measure.Mass }
            && !draft.Atoms[before - 1].IsWord("left", "caught", "mixed");
    }

    private static bool IsStray(PhraseDraft draft, int at) =>
        draft.At(at) is { Kind: AtomKind.Word } word && !Fillers.Holds(word.Lower);
}
