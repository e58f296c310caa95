namespace StudioBot.Chat.Reading.Values;

/// <summary>A number that was given before the pour and waits for it: <c>41</c>, <c>#41</c>, <c>piece 41</c>.</summary>
internal sealed class ReservedSlot() : Slot<int>("a reserved number", "41")
{
    internal override int Take(PhraseDraft draft, int at)
    {
        var lead = 0;
        while (draft.At(at + lead)?.IsWord("piece", "number", "no") == true
            || (lead > 0 && draft.At(at + lead)?.IsMark("#") == true))
        {
            lead++;
        }

        if (draft.Said.Has(this)
            || draft.At(at + lead) is not { IsNumber: true, IsWhole: true } number
            || Flaws.In(draft, at + lead) is not null
            || number.Value is < 1 or > int.MaxValue
            || !draft.Vocabulary.Reserved.Contains((int)number.Value)
            || (!number.IsHashed && lead == 0 && IsCount(draft.At(at + 1))))
        {
            return 0;
        }

        draft.Said.Put(this, (int)number.Value);
        return lead + 1;
    }

    internal override IEnumerable<Meaning> Means(int value) => [new("piece", Figures.Of(value))];

    internal override string Say(int value) => Figures.Of(value);

    // 6 colours, 30 round: a number before what it counts or measures is no piece's.
    private static bool IsCount(Atom? behind) => behind is { Kind: AtomKind.Word }
        && (SurfaceWords.IsNoun(behind.Lower)
            || SurfaceWords.Shape(behind.Lower) is not null
            || behind.IsWord("colours", "colour", "colors", "color", "cols", "col", "clrs", "paints", "shades"));
}
