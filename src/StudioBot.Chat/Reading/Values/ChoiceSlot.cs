namespace StudioBot.Chat.Reading.Values;

/// <summary>One of a few words.</summary>
/// <param name="key">The key under which it is understood; empty: under none.</param>
/// <param name="what">As an error says it.</param>
/// <param name="choices">Each word that is read, with what it stands for.</param>
internal sealed class ChoiceSlot(string key, string what, IReadOnlyDictionary<string, string> choices)
    : Slot<string>(what, choices.Keys.First())
{
    /// <summary>One of a few words of which each stands for itself.</summary>
    /// <param name="key">The key under which it is understood; empty: under none.</param>
    /// <param name="what">As an error says it.</param>
    /// <param name="words">The words.</param>
    public ChoiceSlot(string key, string what, IReadOnlyList<string> words)
        : this(key, what, words.ToDictionary(word => word))
    {
    }

    /// <summary>Words that must stand before it; none: nothing needs to.</summary>
    public IReadOnlyList<string> Leads { get; init; } = [];

    /// <summary>Whether an unknown word is more likely a wrong choice than one to pass over.</summary>
    public bool IsStrict { get; init; }

    internal override bool NamesStrictly => IsStrict;

    internal override IEnumerable<string> Lexicon => choices.Keys.Concat(Leads).Where(word => word.Length > 3);

    internal override int Take(PhraseDraft draft, int at)
    {
        var lead = Leads.Count > 0 && draft.Atoms[at].IsWord([.. Leads]) ? 1 : 0;
        if (draft.Said.Has(this)
            || (Leads.Count > 0 && lead == 0)
            || draft.At(at + lead) is not { Kind: AtomKind.Word or AtomKind.Name } word
            || !choices.TryGetValue(word.Lower, out var choice))
        {
            return 0;
        }

        draft.Said.Put(this, choice);
        return lead + 1;
    }

    internal override IEnumerable<Meaning> Means(string value) => key.Length > 0 ? [new(key, value)] : [];

    internal override string Say(string value) => value;
}
