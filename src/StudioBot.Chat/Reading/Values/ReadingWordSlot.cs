namespace StudioBot.Chat.Reading.Values;

/// <summary>Takes nothing, and lets no page pass over a word of a reading: <c>batch 12 ford4</c> lacks its
/// seconds.</summary>
/// <param name="example">A record of a reading that works.</param>
internal sealed class ReadingWordSlot(string example) : Slot("a detail", example)
{
    internal override int Take(PhraseDraft draft, int at) => 0;

    internal override void Finish(PhraseDraft draft)
    {
        for (var at = 0; at < draft.Atoms.Count && draft.Slips.Count == 0; at++)
        {
            if (draft.At(at) is { Kind: AtomKind.Word } word && (word.IsWord("trace") || CupSlot.IsCup(word.Lower)))
            {
                draft.Slip(at, 1, "is of a reading, and that is told, not asked", Example);
            }
        }
    }

    internal override IEnumerable<Meaning> Means(Phrase said) => [];

    internal override string? Say(Phrase said) => null;
}
