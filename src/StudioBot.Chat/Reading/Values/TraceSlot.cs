namespace StudioBot.Chat.Reading.Values;

/// <summary>A trace's seconds in a record: <c>trace 1.5 s</c>, <c>1.5 s trace</c>; bare seconds where no word beside
/// them went unread. What was wished, and a cup that was misspelt, is no reading.</summary>
internal sealed class TraceSlot() : Slot<double>("a trace", "trace 1.5 s")
{
    private const string Lead = "trace";

    // No trail levels sooner or later and is still a trail.
    private const double Least = 0.01;
    private const double Most = 600;

    internal override IReadOnlyCollection<Measure> Measures => [Measure.Time];

    internal override IEnumerable<string> Lexicon => [Lead];

    internal override int Take(PhraseDraft draft, int at)
    {
        if (draft.Said.Has(this))
        {
            return 0;
        }

        var lead = 0;
        while (draft.At(at + lead) is { } word
            && (word.IsWord(Lead) || (lead > 0 && word.IsWord("reads", "is", "it", "to", "a"))))
        {
            lead++;
        }

        var time = draft.At(at + lead);
        if (time is null || Flaws.In(draft, at + lead) is not null || !time.Measures(Measure.Time))
        {
            return lead == 0 ? 0 : Lacks(draft, at, lead, time);
        }

        if (time.Value is < Least or > Most)
        {
            draft.Slip(
                at + lead, 1, time.Value < Least ? "is too little to be meant" : "is more than can be meant");
        }
        else
        {
            draft.Said.Put(this, time.Value);
        }

        var follows = lead == 0 && draft.At(at + 1)?.IsWord(Lead) == true;
        draft.Of<Draft>(this).Bare = lead == 0 && !follows ? time : null;
        return lead + (follows ? 2 : 1);
    }

    internal override void Finish(PhraseDraft draft)
    {
        if (draft.Slips.Count > 0)
        {
            return;
        }

        var bare = draft.Of<Draft>(this).Bare;
        var isRead = draft.Form.Sheet.Takes.Any(slot => slot is CupSlot or TraceSlot && draft.Said.Has(slot));
        for (var at = 0; at < draft.Atoms.Count && draft.Slips.Count == 0; at++)
        {
            if (draft.At(at) is not { } word || word.Kind is not (AtomKind.Word or AtomKind.Name))
            {
                continue;
            }

            if (isRead && word.IsWord([.. WishWords.All]))
            {
                Wished(draft, at);
            }
            else if (Cups.Near(word.Lower) is { } cup && (bare is not null || char.IsAsciiDigit(word.Lower[^1])))
            {
                Misspelt(draft, at, cup);
            }
            else if (bare is not null && word.Kind == AtomKind.Word && !Fillers.Holds(word.Lower))
            {
                draft.Slip(
                    at,
                    1,
                    "is no cup: were the seconds a trace?",
                    $"{draft.Text[..bare.Start]}{Lead} {draft.Text[bare.Start..]}");
            }
        }
    }

    internal override IEnumerable<Meaning> Means(double value) => [new("trace_s", Figures.Of(value))];

    internal override string Say(double value) => $"{Lead} {Figures.Of(value)} s";

    // Trace 1.5, trace.
    private static int Lacks(PhraseDraft draft, int at, int lead, Atom? time)
    {
        if (time is { IsNumber: true, IsHashed: false } && Flaws.In(draft, at + lead) is null)
        {
            draft.Slip(at + lead, 1, "has no unit: s?", $"{draft.Text[..time.End]} s{draft.Text[time.End..]}");
            return lead + 1;
        }

        if (time is null)
        {
            var end = draft.Atoms[at + lead - 1].End;
            draft.Slip(at, 1, "is without its seconds", $"{draft.Text[..end]} 1.5 s{draft.Text[end..]}");
            return lead;
        }

        return 0;
    }

    private static void Wished(PhraseDraft draft, int at)
    {
        var (start, text) = (draft.Atoms[at].Start, draft.Text);
        var wish = draft.Atoms.Skip(at).Any(atom => atom.Measures(Measure.Time)) ? text[start..].Trim() : "want 22 s";
        if (draft.Form.Sheet.Takes.OfType<BatchSlot>().FirstOrDefault(draft.Said.Has) is { } batch)
        {
            draft.Slip(
                at, 1, "is a wish, not a reading: ask how to get there", $"flow batch {draft.Said.Of(batch)} {wish}");
        }
        else
        {
            draft.Slip(
                at,
                1,
                $"is a wish, not a reading: mix first, then ask flow batch N {wish}",
                text[..start].Trim(' ', ',', ';'));
        }
    }

    // Frod4, ford, frod 4.
    private static void Misspelt(PhraseDraft draft, int at, string cup)
    {
        var (word, count) = (draft.Atoms[at], 1);
        if (draft.At(at + 1) is { IsNumber: true } size && Cups.Sized(cup, Figures.Of(size.Value)) is { } sized)
        {
            (cup, count) = (sized, 2);
        }

        var end = draft.Atoms[at + count - 1].End;
        draft.Slip(at, count, $"did you mean {cup}?", draft.Text[..word.Start] + cup + draft.Text[end..]);
    }

    private sealed class Draft
    {
        // The time that was taken without a word that says what it is.
        public Atom? Bare { get; set; }
    }
}
