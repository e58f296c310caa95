namespace StudioBot.Chat.Reading.Values;

/// <summary>A name that the studio does not have yet: the words up to the first figure.</summary>
/// <param name="key">The key under which it is understood.</param>
/// <param name="what">As an error says it.</param>
/// <param name="example">One that works.</param>
internal sealed class NewNameSlot(string key, string what, string example) : Slot<string>(what, example)
{
    private const int Longest = 40;

    /// <summary>The word that must stand before it; none: it opens the line.</summary>
    public string? Lead { get; init; }

    /// <summary>The word that ends it; none: the first figure does.</summary>
    public string? Until { get; init; }

    internal override int Take(PhraseDraft draft, int at)
    {
        var lead = Lead is { } word && draft.Atoms[at].IsWord(word) ? 1 : 0;
        if (draft.Said.Has(this) || (Lead is not null ? lead == 0 : at > 0))
        {
            return 0;
        }

        var taken = lead;
        while (draft.At(at + taken) is { } part && GoesOn(part, isFirst: taken == lead))
        {
            taken++;
        }

        if (taken == lead)
        {
            return 0;
        }

        var name = draft.Verbatim(at + lead, taken - lead);
        if (name.Length > Longest)
        {
            draft.Slip(at + lead, taken - lead, "is too long for a name");
        }
        else
        {
            draft.Said.Put(this, name);
        }

        return taken;
    }

    // Without a lead the first known name behind ends it: recipe reef medium 60 ml.
    private bool GoesOn(Atom part, bool isFirst) => part.Kind switch
    {
        AtomKind.Word => isFirst || Until is null || !part.IsWord(Until),
        AtomKind.Name => isFirst || Lead is not null,
        _ => false,
    };

    internal override IEnumerable<Meaning> Means(string value) => [new(key, value)];

    internal override string Say(string value) => (Lead is { } lead ? lead + " " : "") + value;
}
