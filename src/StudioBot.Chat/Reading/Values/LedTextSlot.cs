namespace StudioBot.Chat.Reading.Values;

/// <summary>A word, and all behind it as typed: <c>name The pour house</c>.</summary>
/// <param name="key">The key under which it is understood.</param>
/// <param name="lead">The word before it.</param>
/// <param name="what">As an error says it.</param>
/// <param name="example">One that works.</param>
internal sealed class LedTextSlot(string key, string lead, string what, string example) : Slot<string>(what, example)
{
    /// <summary>The most characters it takes.</summary>
    public int Longest { get; init; } = 40;

    internal override IEnumerable<string> Lexicon => lead.Length > 4 ? [lead] : [];

    internal override int Take(PhraseDraft draft, int at)
    {
        if (draft.Said.Has(this) || !draft.Atoms[at].IsWord(lead))
        {
            return 0;
        }

        var text = draft.Rest(at + 1);
        if (text.Length == 0)
        {
            draft.Slip(at, 1, $"needs {What} behind it");
        }
        else if (text.Length > Longest || text.Contains('\n', StringComparison.Ordinal))
        {
            draft.Slip(at, 1, $"takes one line of at most {Figures.Of(Longest)} characters");
        }
        else
        {
            draft.Said.Put(this, text);
        }

        return draft.Atoms.Count - at;
    }

    internal override IEnumerable<Meaning> Means(string value) => [new(key, value)];

    internal override string Say(string value) => $"{lead} {value}";
}
