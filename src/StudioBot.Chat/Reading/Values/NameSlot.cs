namespace StudioBot.Chat.Reading.Values;

/// <summary>One name of the studio: a technique, a recipe, a material, a member.</summary>
/// <param name="kind">What bears it.</param>
/// <param name="key">The key under which it is understood.</param>
/// <param name="what">As an error says it.</param>
/// <param name="example">One that works.</param>
internal sealed class NameSlot(NameKind kind, string key, string what, string example) : Slot<string>(what, example)
{
    /// <summary>Words that may stand before it and go with it: for, to.</summary>
    public IReadOnlyList<string> Leads { get; init; } = [];

    /// <summary>Whether one of those must stand before it.</summary>
    public bool NeedsLead { get; init; }

    /// <summary>Whether an unknown word is more likely a wrong name than one to pass over.</summary>
    public bool IsStrict { get; init; } = true;

    /// <summary>Whether a word of no meaning at its place in a record is a wrong name rather than a remark.</summary>
    public bool NamesAnyWord { get; init; }

    internal override bool NamesStrictly => IsStrict;

    internal override IReadOnlyCollection<NameKind> NameKinds => [kind];

    internal override int Take(PhraseDraft draft, int at)
    {
        if (draft.Said.Has(this))
        {
            return 0;
        }

        var lead = Leads.Count > 0 && draft.Atoms[at].IsWord([.. Leads]) ? 1 : 0;
        if ((NeedsLead && lead == 0) || draft.At(at + lead)?.NameOf(kind) is not { } name)
        {
            return 0;
        }

        draft.Said.Put(this, name.Name);
        return lead + 1;
    }

    internal override IEnumerable<Meaning> Means(string value) => [new(key, value)];

    internal override string Say(string value) => (NeedsLead ? Leads[0] + " " : "") + value;
}
