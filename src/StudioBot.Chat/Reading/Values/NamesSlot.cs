namespace StudioBot.Chat.Reading.Values;

/// <summary>Materials, by their names or by a word that stands in several: <c>white</c>, <c>mica</c>.</summary>
internal sealed class NamesSlot() : Slot<IReadOnlyList<string>>("a material", "white")
{
    internal override bool NamesStrictly => true;

    internal override IReadOnlyCollection<NameKind> NameKinds => [NameKind.Material];

    internal override int Take(PhraseDraft draft, int at)
    {
        var names = draft.Of<List<string>>(this);
        var atom = draft.Atoms[at];
        if (atom.NameOf(NameKind.Material) is { } name)
        {
            names.Add(name.Name);
            return 1;
        }

        if (SizedName.At(draft, at) is { } sized)
        {
            names.Add(sized);
            return 2;
        }

        if (atom.Kind != AtomKind.Word || Fillers.Holds(atom.Lower))
        {
            return 0;
        }

        var holding = draft.Vocabulary.Holding(NameKind.Material, atom.Lower);
        names.AddRange(holding);
        return holding.Count > 0 ? 1 : 0;
    }

    internal override void Finish(PhraseDraft draft)
    {
        if (draft.Of<List<string>>(this) is { Count: > 0 } names)
        {
            draft.Said.Put(this, (IReadOnlyList<string>)names.Distinct().ToList());
        }
    }

    internal override IEnumerable<Meaning> Means(IReadOnlyList<string> value) =>
        [value.Count == 1 ? new("material", value[0]) : new("materials", string.Join('|', value))];

    internal override string Say(IReadOnlyList<string> value) => string.Join(", ", value);
}
