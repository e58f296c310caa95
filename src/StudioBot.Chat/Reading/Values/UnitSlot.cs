namespace StudioBot.Chat.Reading.Values;

/// <summary>The unit that is wanted: <c>to ml</c>, <c>in inches</c>.</summary>
internal sealed class UnitSlot() : Slot<string>("a unit", "to ml")
{
    internal override int Take(PhraseDraft draft, int at)
    {
        var lead = draft.Atoms[at].IsWord("to", "in", "into", "as", "too") ? 1 : 0;
        if (draft.Said.Has(this) || draft.At(at + lead) is not { Kind: AtomKind.Word or AtomKind.Name } word)
        {
            return 0;
        }

        if (word.Lower is "fl" or "fluid"
            && draft.At(at + lead + 1) is { Kind: AtomKind.Word } ounce
            && UnitWords.Of(ounce.Lower)?.Measure == Measure.Ounce)
        {
            draft.Said.Put(this, "fl oz");
            return lead + 2;
        }

        if (UnitWords.Of(word.Lower) is { } unit && (lead == 1 || word.Lower is not "in"))
        {
            draft.Said.Put(this, unit.Name);
            return lead + 1;
        }

        if (lead == 1 && word.Kind == AtomKind.Word && !Fillers.Holds(word.Lower))
        {
            draft.Slip(at + 1, 1, "is no unit", "convert 8 fl oz to ml");
            return 2;
        }

        return 0;
    }

    internal override IEnumerable<Meaning> Means(string value) => [new("to", value)];

    internal override string Say(string value) => "to " + value;
}
