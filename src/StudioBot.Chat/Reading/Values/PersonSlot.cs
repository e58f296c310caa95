namespace StudioBot.Chat.Reading.Values;

/// <summary>A member, or oneself: <c>Pia</c>, <c>me</c>, <c>for Pia</c>.</summary>
/// <param name="key">The key under which it is understood.</param>
internal sealed class PersonSlot(string key) : Slot<string>("a member's name", "Pia")
{
    /// <summary>Words of which one must stand before it; none: nothing needs to.</summary>
    public IReadOnlyList<string> Leads { get; init; } = [];

    /// <summary>Whether the name that opens the line is it too: Pia bought.</summary>
    public bool OpensLine { get; init; }

    /// <summary>Whether me and my mean the one who writes.</summary>
    public bool MayBeMe { get; init; }

    /// <summary>Whether a name that nobody has yet is welcome.</summary>
    public bool MayBeNew { get; init; }

    /// <summary>Another purse than a member's: the kitty.</summary>
    public string? Purse { get; init; }

    internal override bool NamesStrictly => Leads.Count == 0 && !MayBeNew && !MayBeMe;

    internal override IReadOnlyCollection<NameKind> NameKinds => MayBeNew ? [] : [NameKind.Member];

    internal override int Take(PhraseDraft draft, int at)
    {
        var lead = draft.Atoms[at].IsWord([.. Leads.Append("to")]) ? 1 : 0;
        if (draft.Said.Has(this) || !MayStand(draft, at) || draft.At(at + lead) is not { } atom)
        {
            return 0;
        }

        if (atom.NameOf(NameKind.Member) is { } member)
        {
            draft.Said.Put(this, member.Name);
            return lead + 1;
        }

        if ((MayBeMe && atom.IsWord("me", "my", "mine", "i")) || (Purse is { } purse && atom.IsWord(purse)))
        {
            draft.Said.Put(this, MayBeMe ? "me" : Purse!);
            return lead + 1;
        }

        if (MayBeNew && IsNewName(draft, atom))
        {
            draft.Said.Put(this, draft.Typed(at + lead));
            return lead + 1;
        }

        return 0;
    }

    private bool MayStand(PhraseDraft draft, int at) =>
        Leads.Count == 0 || draft.Atoms[at].IsWord([.. Leads]) || (OpensLine && at == 0);

    private static bool IsNewName(PhraseDraft draft, Atom atom) => atom.Kind == AtomKind.Word
        && !Fillers.Holds(atom.Lower)
        && !draft.Context.CommandWords.Contains(atom.Lower);

    internal override IEnumerable<Meaning> Means(string value) => [new(key, value)];

    internal override string Say(string value) => (Leads.Count > 0 ? Leads[0] + " " : "") + value;
}
