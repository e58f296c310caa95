namespace StudioBot.Chat.Reading.Values;

/// <summary>One figure of one measure: <c>120 rpm</c>, <c>20 s</c>, <c>density 0.45</c>.</summary>
/// <param name="measure">What it measures; in that measure's own unit.</param>
/// <param name="key">The key under which it is understood.</param>
/// <param name="what">As an error says it.</param>
/// <param name="example">One that works.</param>
internal sealed class NumberSlot(Measure measure, string key, string what, string example) : Slot<double>(what, example)
{
    /// <summary>The least that can be meant.</summary>
    public double Least { get; init; } = double.Epsilon;

    /// <summary>The most that can be meant.</summary>
    public double Most { get; init; } = 100_000;

    /// <summary>Words of which one must stand before it; none: nothing needs to.</summary>
    public IReadOnlyList<string> Leads { get; init; } = [];

    /// <summary>A word that must stand between its lead and the figure; empty: none.</summary>
    public string Behind { get; init; } = "";

    /// <summary>Whether a bare number behind its lead will do.</summary>
    public bool TakesBare { get; init; }

    /// <summary>The unit in which it is said back.</summary>
    public string Unit { get; init; } = "";

    internal override IReadOnlyCollection<Measure> Measures => [measure];

    internal override IEnumerable<string> Lexicon => Leads.Where(lead => lead.Length > 3);

    internal override int Take(PhraseDraft draft, int at)
    {
        var lead = Lead(draft, at);
        if (draft.Said.Has(this)
            || (Leads.Count > 0 && lead == 0)
            || draft.At(at + lead) is not { } atom
            || Flaws.In(draft, at + lead) is not null
            || !Fits(atom))
        {
            return 0;
        }

        if (atom.Value < Least || atom.Value > Most)
        {
            draft.Slip(at + lead, 1, atom.Value < Least ? "is too little to be meant" : "is more than can be meant");
        }
        else
        {
            draft.Said.Put(this, atom.Value);
        }

        return lead + 1;
    }

    internal override IEnumerable<Meaning> Means(double value) => [new(key, Figures.Of(value))];

    internal override string Say(double value)
    {
        List<string> words = [.. Leads.Take(1), Behind, Figures.Of(value), Unit];
        return string.Join(' ', words.Where(word => word.Length > 0));
    }

    private bool Fits(Atom atom) =>
        atom.Measures(measure) || (TakesBare && atom is { IsNumber: true, IsHashed: false });

    // density is 0.45: a few words may stand between.
    private int Lead(PhraseDraft draft, int at)
    {
        var lead = 0;
        while (Leads.Count > 0
            && draft.At(at + lead) is { } word
            && (word.IsWord([.. Leads]) || (lead > 0 && word.IsWord("reads", "is", "it", "to", "a"))))
        {
            lead++;
        }

        return Behind.Length == 0 ? lead : lead > 0 && draft.At(at + lead)?.IsWord(Behind) == true ? lead + 1 : 0;
    }
}
