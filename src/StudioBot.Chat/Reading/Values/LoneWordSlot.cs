namespace StudioBot.Chat.Reading.Values;

/// <summary>One of a few words that stands alone behind its command: with a value behind it, it is another
/// form's.</summary>
/// <param name="what">As an error says it.</param>
/// <param name="words">The words, the one an error shows first.</param>
internal sealed class LoneWordSlot(string what, IReadOnlyList<string> words) : Slot<string>(what, words[0])
{
    internal override IEnumerable<string> Lexicon => words.Where(word => word.Length > 3);

    internal override int Take(PhraseDraft draft, int at)
    {
        var said = draft.Atoms[at].Lower;
        if (!words.Contains(said)
            || draft.Atoms.Count(atom => atom.Kind is not (AtomKind.Mark or AtomKind.NewLine)) > 1)
        {
            return 0;
        }

        draft.Said.Put(this, said);
        return 1;
    }

    internal override IEnumerable<Meaning> Means(string value) => [new("shows", value)];

    internal override string Say(string value) => value;
}
