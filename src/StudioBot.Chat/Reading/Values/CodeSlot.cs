namespace StudioBot.Chat.Reading.Values;

/// <summary>An invitation: <c>ABC123</c>; case does not matter.</summary>
internal sealed class CodeSlot() : Slot<string>("the code", "ABC123")
{
    internal override int Take(PhraseDraft draft, int at)
    {
        if (draft.Said.Has(this)
            || draft.At(at) is not { Kind: AtomKind.Word or AtomKind.Number }
            || draft.Run(at).Length is < 4 or > 64)
        {
            return 0;
        }

        var chunk = draft.Run(at);
        var end = draft.Atoms[at].Start + chunk.Length;
        draft.Said.Put(this, chunk.ToUpperInvariant());
        return draft.Atoms.Skip(at).TakeWhile(atom => atom.Start < end).Count();
    }

    internal override IEnumerable<Meaning> Means(string value) => [new("code", value)];

    internal override string Say(string value) => value;
}
