using System.Globalization;

namespace StudioBot.Chat.Reading.Values;

/// <summary>The number of a batch: <c>batch 12</c>, <c>b12</c>.</summary>
internal sealed class BatchSlot() : Slot<int>("a batch's number", "batch 12")
{
    /// <summary>Whether a bare number is one, as behind the word batch itself.</summary>
    public bool TakesBare { get; init; }

    internal override IEnumerable<string> Lexicon => ["batch"];

    internal override int Take(PhraseDraft draft, int at)
    {
        if (draft.Said.Has(this))
        {
            return 0;
        }

        var atom = draft.Atoms[at];
        if (Glued(atom) is { } glued && (draft.Vocabulary.Batches.Contains(glued) || !TakesBare))
        {
            // B3 is a shelf as well: a batch only where there is one.
            var isShelf = draft.Vocabulary.Shelves.Contains(atom.Lower) && !draft.Vocabulary.Batches.Contains(glued);
            return isShelf ? 0 : Put(draft, at, 1, glued);
        }

        var lead = atom.IsWord("batch", "from") && draft.At(at + 1) is { IsNumber: true } ? 1 : 0;
        lead += lead == 1 && draft.At(at + 1)!.IsMark("#") ? 1 : 0;
        if (draft.At(at + lead) is not { IsNumber: true } number
            || Flaws.In(draft, at + lead) is not null
            || (lead == 0 && !TakesBare))
        {
            return 0;
        }

        return lead + Put(draft, at + lead, 1, number.IsWhole && number.Value < int.MaxValue ? (int)number.Value : -1);
    }

    internal override IEnumerable<Meaning> Means(int value) => [new("batch", Figures.Of(value))];

    internal override string Say(int value) => TakesBare ? Figures.Of(value) : $"batch {value}";

    // b12.
    private static int? Glued(Atom atom) => atom is { Kind: AtomKind.Word, Lower: ['b', _, ..] and { Length: < 8 } }
        && int.TryParse(atom.Lower[1..], NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? number
            : null;

    private int Put(PhraseDraft draft, int at, int taken, int number)
    {
        if (draft.Vocabulary.Batches.Contains(number))
        {
            draft.Said.Put(this, number);
        }
        else
        {
            draft.Slip(at, taken, "is no batch here");
        }

        return taken;
    }
}
