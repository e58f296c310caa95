namespace StudioBot.Chat.Reading.Values;

/// <summary>A page of an answer too long for one: <c>page 2</c>. One behind the last is the last.</summary>
internal sealed class PageSlot() : Slot<int>("a page", "page 2")
{
    private const int Most = 9999;

    internal override IEnumerable<string> Lexicon => ["page"];

    internal override int Take(PhraseDraft draft, int at)
    {
        if (draft.Said.Has(this)
            || !draft.Atoms[at].IsWord("page")
            || draft.At(at + 1) is not { IsNumber: true } number
            || Flaws.In(draft, at + 1) is not null)
        {
            return 0;
        }

        if (number is { IsWhole: true, Value: >= 1 and <= Most })
        {
            draft.Said.Put(this, (int)number.Value);
        }
        else
        {
            draft.Slip(at + 1, 1, "is no page: they count from 1");
        }

        return 2;
    }

    internal override IEnumerable<Meaning> Means(int value) => [new("page", Figures.Of(value))];

    internal override string Say(int value) => $"page {value}";
}
