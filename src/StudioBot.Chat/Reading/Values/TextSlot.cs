namespace StudioBot.Chat.Reading.Values;

/// <summary>Words kept as typed: a note, a reason.</summary>
/// <param name="what">As an error says it.</param>
/// <param name="example">One that works.</param>
internal sealed class TextSlot(string what, string example) : Slot<string>(what, example)
{
    /// <summary>The slot that comes first; the words begin behind it.</summary>
    public Slot? After { get; init; }

    /// <summary>Whether a question mark may stand in the words without making a question of the message.</summary>
    public bool KeepsQuestions { get; init; }

    internal override bool TakesAnything => true;

    internal override int Take(PhraseDraft draft, int at)
    {
        if (draft.Said.Has(this) || (After is { } before && !draft.Said.Has(before)))
        {
            return 0;
        }

        var start = at;
        while (start + 1 < draft.Atoms.Count && draft.At(start) is { } mark && Parts(mark, isFirst: start == at))
        {
            start++;
        }

        var text = draft.Rest(start);
        if (text.Length == 0)
        {
            return 0;
        }

        draft.Said.Put(this, text);
        return draft.Atoms.Count - at;
    }

    // What stands between the piece and the words; the dash of 17-1 is no such mark.
    private static bool Parts(Atom mark, bool isFirst) =>
        mark is { Kind: AtomKind.Mark, Lower: ":" or "," or "-" or ";" }
        && !(isFirst && mark is { Glued: true, Lower: "-" });

    internal override IEnumerable<Meaning> Means(string value) => [new("text", value)];

    internal override string Say(string value) => value;
}
