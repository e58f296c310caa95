namespace StudioBot.Chat.Reading.Values;

/// <summary>One or more lots: <c>lot H-12</c>, <c>lots R-3 H-12</c>.</summary>
internal sealed class LotSlot() : Slot<IReadOnlyList<string>>("a lot", "lot H-12")
{
    /// <summary>Whether a label that is not known yet is welcome, as for a delivery.</summary>
    public bool MayBeNew { get; init; }

    /// <summary>Whether the command's own word says that a lot follows, so that no other has to.</summary>
    public bool TakesBare { get; init; }

    internal override IEnumerable<string> Lexicon => ["lots"];

    internal override bool NamesStrictly => IsRequired && !MayBeNew;

    internal override int Take(PhraseDraft draft, int at)
    {
        if (draft.Said.Has(this))
        {
            return 0;
        }

        var lead = draft.Atoms[at].IsWord("lot", "lots") ? 1 : 0;
        if (lead == 1 && draft.At(at + 1) is { } colon && (colon.IsMark(":") || colon.IsMark("#")))
        {
            lead = 2;
        }

        List<string> labels = [];
        var taken = lead;
        while (draft.At(at + taken) is { Kind: AtomKind.Word or AtomKind.Number } word)
        {
            if ((lead > 0 || MayStandBare(word)) && draft.Vocabulary.Lot(draft.Verbatim(at + taken)) is { } label)
            {
                labels.Add(label);
            }
            else if (lead > 0 && labels.Count == 0 && IsLabel(word))
            {
                Unknown(draft, at + taken, labels);
            }
            else
            {
                break;
            }

            taken = draft.Past(at + taken + 1, "and") - at;
        }

        if (labels.Count > 0)
        {
            draft.Said.Put(this, labels);
        }
        else if (lead > 0 && taken == lead)
        {
            return Odd(draft, at + lead) is > 0 and var odd ? lead + odd : 0;
        }

        return taken == lead ? 0 : taken;
    }

    internal override IEnumerable<Meaning> Means(IReadOnlyList<string> value) =>
        [value.Count == 1 ? new("lot", value[0]) : new("lots", string.Join('|', value))];

    internal override string Say(IReadOnlyList<string> value) =>
        (TakesBare ? "" : value.Count == 1 ? "lot " : "lots ") + string.Join(' ', value);

    // Somebody may have labelled a lot 18, or A: behind no lead that is a price, or a word between.
    private bool MayStandBare(Atom word) => IsRequired || !(word.IsNumber || Fillers.Holds(word.Lower));

    private static bool IsLabel(Atom word) => word.IsNumber
        || word.Lower.Any(char.IsAsciiDigit)
        || (word.Lower.Length <= 4 && !Fillers.Holds(word.Lower));

    // A word that stands where a label stands, and is none: =cmd, winterberry; not a lot of.
    private int Odd(PhraseDraft draft, int at)
    {
        var isGlued = draft.At(at) is { Kind: AtomKind.Mark } mark && draft.At(at + 1)?.Start == mark.End;
        var count = isGlued ? 2 : 1;
        if (draft.At(at + count - 1) is not { Kind: AtomKind.Word } word || (count == 1 && Fillers.Holds(word.Lower)))
        {
            return 0;
        }

        draft.Slips.Add(new Slip(draft.Atoms[at].Start, draft.Chunk(at), MayBeNew
            ? "can't be a lot's label: that is a bare word with a digit, or of four letters at most"
            : "is no lot here"));
        return count;
    }

    private void Unknown(PhraseDraft draft, int at, List<string> labels)
    {
        if (MayBeNew)
        {
            labels.Add(draft.Verbatim(at).ToUpperInvariant());
        }
        else
        {
            draft.Slip(at, 1, "is no lot here");
        }
    }
}
