namespace StudioBot.Chat.Reading.Values;

/// <summary>The numbers of pieces: <c>17</c>, <c>#17</c>, <c>17 18 21</c>, <c>17 and 18</c>.</summary>
internal sealed class PiecesSlot() : Slot<IReadOnlyList<int>>("a piece's number", "17")
{
    /// <summary>The most of them at once.</summary>
    public int Most { get; init; } = 1;

    /// <summary>Whether one number behind them is something else: a price.</summary>
    public bool LeavesLast { get; init; }

    /// <summary>The slot of a surface beside which no piece is needed.</summary>
    public SurfaceSlot? Unless { get; init; }

    /// <summary>Why more than one, or even one, must be agreed to; none where all is plain.</summary>
    public Func<IReadOnlyList<int>, string?> Doubts { get; init; } = _ => null;

    /// <summary>Words that must stand before it; none: nothing needs to.</summary>
    public IReadOnlyList<string> Leads { get; init; } = [];

    internal override int Take(PhraseDraft draft, int at)
    {
        if (draft.Said.Has(this) || (Unless is { } surface && draft.Of<SurfaceDraft>(surface).Now.IsComplete))
        {
            return 0;
        }

        var lead = Lead(draft, at);
        if ((Leads.Count > 0 && lead == 0) || (lead == 0 && IsLedLater(draft, at)))
        {
            return 0;
        }

        var (pieces, behind) = Run(draft, at + lead);
        if (pieces.Count > 0)
        {
            draft.Said.Put(this, pieces);
        }

        if (pieces.Count > 0 && Doubts(pieces) is { } doubt)
        {
            draft.Doubt(at + lead, 1, doubt);
        }

        return behind == at + lead ? 0 : behind - at;
    }

    // 17, 18 and 21, up to what is no piece: that is a slip. None where a figure has a flaw, which has its own slip.
    private (List<int> Pieces, int Behind) Run(PhraseDraft draft, int from)
    {
        List<int> pieces = [];
        var (at, behind) = (from, from);
        while (pieces.Count < Most && draft.At(at) is { IsNumber: true } number && IsPiece(draft, at))
        {
            if (Flaws.In(draft, at) is not null)
            {
                return ([], from);
            }

            if (Wrong(draft, number) is { } why)
            {
                draft.Slip(at, 1, why);
                return ([], at + 1);
            }

            pieces.Add((int)number.Value);
            behind = at + 1;
            at = draft.Past(behind, "and", "piece", "pieces");
        }

        return (pieces, behind);
    }

    internal override IEnumerable<Meaning> Means(IReadOnlyList<int> value) =>
        [value.Count == 1 ? new("piece", Figures.Of(value[0])) : new("pieces", string.Join('|', value))];

    internal override string Say(IReadOnlyList<int> value) =>
        (Leads.Count > 0 ? Leads[0] + " " : "") + string.Join(' ', value);

    /// <summary>Why this number is no piece's; none where it is.</summary>
    public static string? Wrong(PhraseDraft draft, Atom number) => number switch
    {
        { Value: < 1 } => "is no piece: they count from 1",
        { IsWhole: false } => "is no piece: they have whole numbers",
        _ when !draft.Vocabulary.Pieces.Contains((int)Math.Min(number.Value, int.MaxValue)) =>
            "is no piece here: there is none of that number",
        _ => null,
    };

    private int Lead(PhraseDraft draft, int at)
    {
        var lead = 0;
        while (draft.At(at + lead) is { } word && (IsLead(word) || (word.IsMark("#") && lead > 0)))
        {
            lead++;
        }

        return lead;
    }

    private bool IsLead(Atom word) =>
        word.IsWord("piece", "pieces", "no", "number", "from", "of") || word.IsWord([.. Leads]);

    // The last bare number is a price; a number before a noun of its own is a count.
    private bool IsPiece(PhraseDraft draft, int at)
    {
        if (LeavesLast && at > 0 && draft.Atoms[at - 1].IsNumber && !LaterNumber(draft, at))
        {
            return false;
        }

        if (IsHour(draft, at) || (draft.At(at + 1) is { } plus && plus.IsMark("+")))
        {
            return false;
        }

        // Behind a piece, 120 resin A is so much of it.
        if (at > 0 && draft.Atoms[at - 1].IsNumber
            && draft.At(at + 1)?.NameOf(NameKind.Material) is { } material
            && draft.Vocabulary.Resins.Contains(material.Name))
        {
            return false;
        }

        return draft.At(at + 1) is not { Kind: AtomKind.Word } noun || IsBeforeWords(draft) || !IsCounted(draft, noun);
    }

    // 17 gelled 14.20: an hour where minutes count.
    private static bool IsHour(PhraseDraft draft, int at) =>
        ClockWords.Dotted(draft, at) is not null
        && draft.Form.Sheet.Takes.Any(slot => slot is WhenSlot { IsMinute: true });

    // note 17 a bit dull, note 17 panel warped: what follows is anybody's words.
    private bool IsBeforeWords(PhraseDraft draft) =>
        draft.Form.Sheet.Takes.Any(slot => slot is TextSlot { After: { } before } && before == this);

    // 60 B is so much of part B, except where B is a shelf.
    private static bool IsCounted(PhraseDraft draft, Atom noun) => SurfaceWords.IsNoun(noun.Lower)
        || noun.IsWord("coats", "coat", "colours", "colors", "people", "cm")
        || (noun.IsWord("a", "b") && !draft.Form.Sheet.Takes.Any(slot => slot is ShelfSlot))
        || CalendarWords.Month(noun.Lower) is not null;

    // 40 from 17: the number behind from is the piece.
    private static bool IsLedLater(PhraseDraft draft, int at)
    {
        for (var later = at + 1; later + 1 < draft.Atoms.Count; later++)
        {
            var next = draft.Atoms[later + 1];
            if (draft.Atoms[later].IsWord("from") && (next.IsNumber || next.IsWord("piece")))
            {
                return true;
            }
        }

        return false;
    }

    private static bool LaterNumber(PhraseDraft draft, int at)
    {
        for (var later = at + 1; later < draft.Atoms.Count; later++)
        {
            if (draft.Atoms[later].IsNumber || draft.Atoms[later].Measures(Measure.Money))
            {
                return true;
            }
        }

        return false;
    }
}
