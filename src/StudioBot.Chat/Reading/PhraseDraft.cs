namespace StudioBot.Chat.Reading;

/// <summary>A phrase while it is being read: what is taken, what is half put together, what is wrong.</summary>
internal sealed class PhraseDraft(
    Command form, string text, string typed, IReadOnlyList<Atom> atoms, ReadingContext context)
{
    // The longest word that an error repeats whole.
    private const int Shown = 40;

    private readonly bool[] _taken = new bool[atoms.Count];
    private readonly Dictionary<Slot, object> _drafts = [];

    public IReadOnlyList<Atom> Atoms { get; } = atoms;

    public ReadingContext Context { get; } = context;

    /// <summary>The whole message as typed.</summary>
    public string Text => text;

    public Phrase Said { get; } = new(form, typed, context);

    public Command Form => form;

    public List<Slip> Slips { get; } = [];

    /// <summary>What in a record is plain only to a person.</summary>
    public List<Slip> Doubts { get; } = [];

    public Vocabulary Vocabulary => Context.Vocabulary;

    /// <summary>How many atoms found their place.</summary>
    public int Fitting => _taken.Count(taken => taken) - Slips.Count(slip => slip.Word.Length > 0);

    /// <summary>How many atoms some slot took, rightly or not.</summary>
    public int Taken => _taken.Count(taken => taken);

    public bool IsTaken(int at) => _taken[at];

    /// <summary>The atom there; none behind the end, or where it is already taken.</summary>
    public Atom? At(int at) => at >= 0 && at < Atoms.Count && !_taken[at] ? Atoms[at] : null;

    /// <summary>The next atom that is no mark between.</summary>
    public int Past(int at, params ReadOnlySpan<string> words)
    {
        while (At(at) is { } atom && (atom.Kind == AtomKind.Mark || atom.IsWord(words)))
        {
            at++;
        }

        return at;
    }

    public void MarkTaken(int at, int count)
    {
        for (var i = at; i < at + count && i < _taken.Length; i++)
        {
            _taken[i] = true;
        }
    }

    /// <summary>What a slot has put together so far.</summary>
    public T Of<T>(Slot slot)
        where T : class, new()
    {
        if (!_drafts.TryGetValue(slot, out var draft))
        {
            _drafts[slot] = draft = new T();
        }

        return (T)draft;
    }

    /// <summary>The characters of these atoms as typed, to be kept.</summary>
    public string Verbatim(int at, int count = 1) => text[Atoms[at].Start..Atoms[at + count - 1].End];

    /// <summary>The characters of these atoms as typed, to be shown: long ones lose their middle.</summary>
    public string Typed(int at, int count = 1) => Short(Verbatim(at, count));

    /// <summary>The rest of the message from this atom on, as typed.</summary>
    public string Rest(int at) => at < Atoms.Count ? text[Atoms[at].Start..].Trim() : "";

    /// <summary>The whole run of characters without a blank in which this atom stands, to be shown.</summary>
    public string Chunk(int at) => Short(Run(at));

    /// <summary>The whole run of characters without a blank in which this atom stands, to be kept.</summary>
    public string Run(int at)
    {
        var (start, end) = (Atoms[at].Start, Atoms[at].End);
        while (start > 0 && !char.IsWhiteSpace(text[start - 1]))
        {
            start--;
        }

        while (end < text.Length && !char.IsWhiteSpace(text[end]))
        {
            end++;
        }

        return text[start..end].Trim(',', '.', '?', '!', ';');
    }

    public void Slip(int at, int count, string why, string? example = null) =>
        Slips.Add(new Slip(Atoms[at].Start, Typed(at, count), why, example));

    public void Missing(string why, string? example = null) => Slips.Add(new Slip(text.Length, "", why, example));

    public void Doubt(int at, int count, string why) => Doubts.Add(new Slip(Atoms[at].Start, Typed(at, count), why));

    public static string Short(string word) => word.Length <= Shown ? word
        : word[..Characters.Before(word, 12)] + "…" + word[Characters.Before(word, word.Length - 4)..];
}
