namespace StudioBot.Chat.Reading.Values;

/// <summary>A number of something: <c>2 coats</c>, <c>8 people</c>.</summary>
/// <param name="key">The key under which it is understood.</param>
/// <param name="what">As an error says it.</param>
/// <param name="nouns">What is counted; the first is the one that is shown.</param>
/// <param name="most">The most that is still meant.</param>
internal sealed class CountSlot(string key, string what, IReadOnlyList<string> nouns, int most)
    : Slot<int>(what, "2 " + nouns[0])
{
    /// <summary>A word before a bare number that says what is counted: for eight, and nothing behind.</summary>
    public string? Lead { get; init; }

    internal override IEnumerable<string> Lexicon => nouns.Where(noun => noun.Length > 4);

    internal override int Take(PhraseDraft draft, int at)
    {
        var lead = Lead is not null && draft.Atoms[at].IsWord(Lead) ? 1 : 0;
        if (draft.Said.Has(this) || draft.At(at + lead) is not { IsNumber: true } number)
        {
            return 0;
        }

        var noun = draft.At(at + lead + 1);
        var hasNoun = noun is { Kind: AtomKind.Word } && nouns.Contains(noun.Lower);
        var standsAlone = lead == 1 && (noun is null || noun.IsMark(","));
        if (!hasNoun && !standsAlone)
        {
            return 0;
        }

        var taken = lead + (hasNoun ? 2 : 1);
        if (Flaws.In(draft, at + lead) is { } flaw)
        {
            draft.Slip(at + lead, taken - lead, flaw);
        }
        else if (!number.IsWhole || number.Value < 1)
        {
            draft.Slip(at + lead, taken - lead, number.Value < 1 ? "is too few: at least one" : "is no whole number");
        }
        else if (number.Value > most)
        {
            draft.Slip(at + lead, taken - lead, "is more than a studio does");
        }
        else
        {
            draft.Said.Put(this, (int)number.Value);
        }

        return taken + (draft.At(at + taken) is { } dot && dot.IsMark(".") ? 1 : 0);
    }

    internal override IEnumerable<Meaning> Means(int value) => [new(key, Figures.Of(value))];

    internal override string Say(int value) => $"{value} {nouns[0]}";
}
