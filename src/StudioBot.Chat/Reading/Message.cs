namespace StudioBot.Chat.Reading;

/// <summary>One message cut into atoms, from which several readings can be tried.</summary>
internal sealed class Message
{
    // What people say before they come to the point.
    private static readonly HashSet<string> Openings =
    [
        .. "oops hey hi hello ok please pls sorry sry and so well i ive we weve just have".Split(' '),
    ];

    private readonly string _text;
    private readonly ReadingContext _context;

    public Message(string text, ReadingContext context, Catalogue catalogue)
    {
        (_text, _context, Catalogue) = (text, context, catalogue);
        Atoms = Atomiser.Join(Characters.Plain(text), context.Vocabulary);
        Start = FirstMeant(Atoms);
        IsQuestion = Asks();
    }

    public IReadOnlyList<Atom> Atoms { get; }

    public Catalogue Catalogue { get; }

    public Vocabulary Vocabulary => _context.Vocabulary;

    /// <summary>The first atom that is no greeting or the like; 0 where all are.</summary>
    public int Start { get; }

    /// <summary>
    /// Whether it asks, which bars recording: wherever a question mark stands, or where its first word asks.
    /// </summary>
    public bool IsQuestion { get; }

    /// <summary>The command word, or two, that begin here; the atoms they take.</summary>
    public (string Word, int Taken)? WordAt(int at)
    {
        if (at >= Atoms.Count || Atoms[at].Kind is not (AtomKind.Word or AtomKind.Name))
        {
            return null;
        }

        var one = Atoms[at].Lower;
        if (at + 1 < Atoms.Count && Atoms[at + 1].Kind == AtomKind.Word
            && one + " " + Atoms[at + 1].Lower is var two && Catalogue.Of(two).Count > 0)
        {
            return (two, 2);
        }

        var forms = Catalogue.Of(one);
        if (forms.Count == 0)
        {
            return null;
        }

        // A word that says something beside the command is read once more as a value.
        return (one, forms.Any(form => form.Sheet.AlsoSaying.Contains(one)) ? 0 : 1);
    }

    /// <summary>The best reading of these forms over these atoms.</summary>
    public PhraseDraft Read(IReadOnlyList<Command> forms, int from, int to) =>
        Read(forms, Atoms.Skip(from).Take(to - from).ToList(), from, to);

    /// <summary>The best reading of these forms over atoms that are put in another order.</summary>
    public PhraseDraft Read(IReadOnlyList<Command> forms, IReadOnlyList<Atom> atoms, int from, int to)
    {
        var start = from > 0 && from <= Atoms.Count ? Atoms[from - 1].Start : 0;
        var end = to > 0 && to <= Atoms.Count ? Atoms[to - 1].End : _text.Length;
        var typed = end > start ? _text[start..end] : _text;
        var body = to >= Atoms.Count ? _text : _text[..end];
        var drafts = forms.Select(form => PhraseReader.Read(form, body, typed, atoms, _context)).ToList();
        var best = drafts.Where(draft => draft.Slips.Count == 0 && draft.Doubts.Count == 0)
                .MaxBy(draft => draft.Fitting)
            ?? drafts.FirstOrDefault(draft => draft.Slips.Count == 0)
            ?? drafts.MaxBy(draft => draft.Fitting)!;
        return best is { Form.Records: false, Taken: 0 } ? Told(drafts) ?? best : best;
    }

    // me mute torsh: the question that would pass it all over is not what was meant.
    private static PhraseDraft? Told(List<PhraseDraft> drafts) =>
        drafts.Where(draft => draft.Form.Records && draft.Taken > 0).MaxBy(draft => draft.Taken);

    private static int FirstMeant(IReadOnlyList<Atom> atoms)
    {
        var at = 0;
        while (at < atoms.Count && IsOpening(atoms[at]))
        {
            at++;
        }

        return at < atoms.Count ? at : 0;
    }

    private static bool IsOpening(Atom atom) => atom.Kind switch
    {
        AtomKind.Word or AtomKind.Name => Openings.Contains(atom.Lower),
        AtomKind.Mark => atom.Lower is not ("#" or "?" or "/"),
        _ => false,
    };

    private bool Asks()
    {
        if (Atoms.Any(atom => atom.IsMark("?")))
        {
            return true;
        }

        return Atoms.Count > 0
            && Atoms[Start] is { Kind: AtomKind.Word } first
            && Fillers.OpensQuestion(first.Lower)
            && WordAt(Start) is null;
    }
}
