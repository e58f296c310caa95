namespace StudioBot.Chat.Reading.Values;

/// <summary>A shelf, or a row of shelves: <c>B3</c>, <c>shelf B</c>.</summary>
internal sealed class ShelfSlot() : Slot<string>("a shelf", "B3")
{
    internal override int Take(PhraseDraft draft, int at)
    {
        var lead = draft.Atoms[at].IsWord("shelf", "to", "on") ? 1 : 0;
        lead += lead == 1 && draft.At(at + 1) is { } shelf && shelf.IsWord("shelf") ? 1 : 0;
        if (draft.Said.Has(this) || draft.At(at + lead) is not { Kind: AtomKind.Word } word || !IsLabel(word.Lower))
        {
            return 0;
        }

        draft.Said.Put(this, word.Lower.ToUpperInvariant());
        return lead + 1;
    }

    internal override IEnumerable<Meaning> Means(string value) => [new("shelf", value)];

    internal override string Say(string value) => value;

    /// <summary>One or two letters and at most two digits; a row may have no digit.</summary>
    internal static bool IsLabel(string word) => word.Length <= 4
        && char.IsAsciiLetter(word[0])
        && word.ToLowerInvariant() is not ("a" or "i" or "s")
        && word.SkipWhile(char.IsAsciiLetter).All(char.IsAsciiDigit)
        && (word.Length == 1 || char.IsAsciiDigit(word[^1]));
}
