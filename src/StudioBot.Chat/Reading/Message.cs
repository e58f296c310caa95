namespace StudioBot.Chat.Reading;

/// <summary>One message cut into atoms, from which several readings can be tried.</summary>
internal sealed class Message
{
    private readonly string _text;
    private readonly ReadingContext _context;

    public Message(string text, ReadingContext context, Catalogue catalogue)
    {
        (_text, _context) = (text, context);
        Atoms = Atomiser.Join(Characters.Plain(text), context.Vocabulary);
        Catalogue = catalogue;
    }

    public IReadOnlyList<Atom> Atoms { get; }

    public Catalogue Catalogue { get; }

    public Vocabulary Vocabulary => _context.Vocabulary;

    /// <summary>The first atoms that are a greeting or the like.</summary>
    public int Start
    {
        get
        {
            var at = 0;
            while (at < Atoms.Count && (Atoms[at].IsWord("oops", "hey", "hi", "hello", "ok", "please", "pls", "sorry", "sry", "and", "so", "well", "i", "ive", "we", "weve", "just", "have")
                || (Atoms[at].Kind == AtomKind.Mark && Atoms[at].Lower is not "#" and not "?" and not "/")))
            {
                at++;
            }

            return at < Atoms.Count ? at : 0;
        }
    }

    /// <summary>The command word, or two, that begin here; the atoms they take.</summary>
    public (string Word, int Taken)? WordAt(int at)
    {
        if (at >= Atoms.Count || Atoms[at].Kind is not (AtomKind.Word or AtomKind.Name))
        {
            return null;
        }

        if (at + 1 < Atoms.Count && Atoms[at + 1].Kind == AtomKind.Word && Catalogue.Of(Atoms[at].Lower + " " + Atoms[at + 1].Lower).Count > 0)
        {
            return (Atoms[at].Lower + " " + Atoms[at + 1].Lower, 2);
        }

        if (Catalogue.Of(Atoms[at].Lower).Count > 0)
        {
            return (Atoms[at].Lower, Catalogue.Of(Atoms[at].Lower).Any(form => form.Sheet.AlsoSaying.Contains(Atoms[at].Lower)) ? 0 : 1);
        }

        return null;
    }

    /// <summary>The best reading of these forms over these atoms.</summary>
    public PhraseDraft Read(IReadOnlyList<Command> forms, int from, int to) => Read(forms, Atoms.Skip(from).Take(to - from).ToList(), from, to);

    /// <summary>The best reading of these forms over atoms that are put in another order.</summary>
    public PhraseDraft Read(IReadOnlyList<Command> forms, IReadOnlyList<Atom> atoms, int from, int to)
    {
        var start = from > 0 && from <= Atoms.Count ? Atoms[from - 1].Start : 0;
        var end = to > 0 && to <= Atoms.Count ? Atoms[to - 1].End : _text.Length;
        var typed = end > start ? _text[start..end] : _text;
        var body = to >= Atoms.Count ? _text : _text[..end];
        var drafts = forms.Select(form => PhraseReader.Read(form, body, typed, atoms, _context)).ToList();
        return drafts.Where(draft => draft.Slips.Count == 0 && draft.Doubts.Count == 0).MaxBy(draft => draft.Fitting)
            ?? drafts.FirstOrDefault(draft => draft.Slips.Count == 0)
            ?? drafts.MaxBy(draft => draft.Fitting)!;
    }
}
