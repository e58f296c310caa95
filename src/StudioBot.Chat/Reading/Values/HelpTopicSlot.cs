namespace StudioBot.Chat.Reading.Values;

/// <summary>What help is asked for: any command word.</summary>
internal sealed class HelpTopicSlot() : Slot<string>("a command", "resin")
{
    internal override int Take(PhraseDraft draft, int at)
    {
        if (draft.Said.Has(this)
            || draft.At(at) is not { Kind: AtomKind.Word or AtomKind.Name } word
            || !draft.Context.CommandWords.Contains(word.Lower))
        {
            return 0;
        }

        draft.Said.Put(this, word.Lower);
        return 1;
    }

    internal override IEnumerable<Meaning> Means(string value) => [new("topic", value)];

    internal override string Say(string value) => value;
}
