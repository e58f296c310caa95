using StudioBot.Chat.Replies;

namespace StudioBot.Chat.Reading.Values;

/// <summary>A member, or oneself: <c>Pia</c>, <c>me</c>, <c>for Pia</c>.</summary>
/// <param name="key">The key under which it is understood.</param>
internal sealed class PersonSlot(string key) : Slot<string>("a member's name", "Pia")
{
    private const int LongestLabel = 20;
    private const int MostWords = 3;

    /// <summary>Words of which one must stand before it; none: nothing needs to.</summary>
    public IReadOnlyList<string> Leads { get; init; } = [];

    /// <summary>Whether the name that opens the line is it too: Pia bought.</summary>
    public bool OpensLine { get; init; }

    /// <summary>Whether me and my mean the one who writes.</summary>
    public bool MayBeMe { get; init; }

    /// <summary>Whether a name that nobody has yet is welcome.</summary>
    public bool MayBeNew { get; init; }

    /// <summary>Whether who has left is meant too: their account may be open.</summary>
    public bool MayHaveLeft { get; init; }

    /// <summary>Whether nobody else is meant.</summary>
    public bool HasLeft { get; init; }

    /// <summary>Another purse than a member's: the kitty.</summary>
    public string? Purse { get; init; }

    internal override bool NamesStrictly => Leads.Count == 0 && !MayBeNew && !MayBeMe;

    internal override IReadOnlyCollection<NameKind> NameKinds => MayBeNew || HasLeft ? [] : [NameKind.Member];

    internal override int Take(PhraseDraft draft, int at)
    {
        var lead = draft.Atoms[at].IsWord([.. Leads.Append("to")]) ? 1 : 0;
        if (draft.Said.Has(this) || !MayStand(draft, at) || draft.At(at + lead) is not { } atom)
        {
            return 0;
        }

        if (MayBeNew)
        {
            return TakeNew(draft, at + lead) is > 0 and var words ? lead + words : 0;
        }

        if ((HasLeft || MayHaveLeft && atom.Members.Count == 0) && Gone(draft, at + lead) is (var gone, var taken))
        {
            draft.Said.Put(this, gone);
            return lead + taken;
        }

        if (HasLeft)
        {
            return 0;
        }

        if (atom.Members is [var first, ..] members)
        {
            TakeMember(draft, at + lead, first, members);
            return lead + 1;
        }

        if ((MayBeMe && atom.IsWord("me", "my", "mine", "i")) || (Purse is { } purse && atom.IsWord(purse)))
        {
            draft.Said.Put(this, MayBeMe ? "me" : Purse!);
            return lead + 1;
        }

        // Paid 5 to me.
        if (!MayBeMe && IsRequired && lead > 0 && atom.IsWord("me", "myself"))
        {
            draft.Slip(at + lead, 1, "is you: name the other");
        }

        return 0;
    }

    // The longest name of who has left: it is no name of the studio any more, so its words stand alone.
    private static (string Name, int Words)? Gone(PhraseDraft draft, int at)
    {
        for (var words = Math.Min(MostWords, draft.Atoms.Count - at); words > 0; words--)
        {
            if (draft.Vocabulary.Former.TryGetValue(draft.Verbatim(at, words).ToLowerInvariant(), out var name))
            {
                return (name, words);
            }
        }

        return null;
    }

    // Pia Berg and Pia Holm are both Pia: which is asked, and so it is where one is Pia and nothing else.
    private void TakeMember(PhraseDraft draft, int at, string first, IReadOnlyList<string> members)
    {
        if (members.Count > 1)
        {
            var atom = draft.Atoms[at];
            List<(string Label, string Line)> choices = [.. members.Select(name => (
                Labels.Cut(name, LongestLabel),
                $"{draft.Text[..atom.Start]}{name}{draft.Text[atom.End..]}".Trim()))];
            draft.Slips.Add(new Slip(
                atom.Start, draft.Typed(at), $"is {string.Join(" or ", members)}: which?", choices[0].Line)
            {
                Choices = choices,
            });
            return;
        }

        if (draft.Form.Records && draft.Vocabulary.Namesakes.TryGetValue(first, out var others))
        {
            draft.Doubt(at, 1, $"is {first} here, or {string.Join(" or ", others)}: which?");
        }

        draft.Said.Put(this, first);
    }

    // The words that are no other word of the command: Jonas, Pia Holm; a known name is who bears it.
    private int TakeNew(PhraseDraft draft, int at)
    {
        var taken = 0;
        while (taken < MostWords && draft.At(at + taken) is { } atom && IsOfName(draft, atom))
        {
            taken++;
        }

        if (taken > 0)
        {
            draft.Said.Put(this, draft.Verbatim(at, taken));
        }

        return taken;
    }

    private static bool IsOfName(PhraseDraft draft, Atom atom) =>
        atom.NameOf(NameKind.Member) is not null || (!atom.IsWord("member", "steward") && IsNewName(draft, atom));

    private bool MayStand(PhraseDraft draft, int at) =>
        Leads.Count == 0 || draft.Atoms[at].IsWord([.. Leads]) || (OpensLine && at == 0);

    private static bool IsNewName(PhraseDraft draft, Atom atom) => atom.Kind == AtomKind.Word
        && !Fillers.Holds(atom.Lower)
        && !draft.Context.CommandWords.Contains(atom.Lower);

    internal override IEnumerable<Meaning> Means(string value) => [new(key, value)];

    internal override string Say(string value) => (Leads.Count > 0 ? Leads[0] + " " : "") + value;
}
