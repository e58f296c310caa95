using StudioBot.Craft.Mixing;

namespace StudioBot.Chat.Reading.Values;

/// <summary>Parts to parts: <c>3:1</c>, <c>2/1</c>, <c>100:45 by weight</c>.</summary>
internal sealed class RatioSlot() : Slot<MixRatio>("a ratio", "3:1")
{
    // A part a thousand times smaller than another can't be measured beside it.
    private const double WidestSpread = 1000;

    internal override IEnumerable<string> Lexicon => ["weight", "volume"];

    internal override int Take(PhraseDraft draft, int at)
    {
        var atom = draft.Atoms[at];
        if (draft.Said.Has(this) || atom.Kind is not (AtomKind.Ratio or AtomKind.Fraction))
        {
            return Basis(draft, at) is { } word && !draft.Said.Has(this) ? Keep(draft, word.By, word.Taken) : 0;
        }

        var (by, tail) = Basis(draft, at + 1) ?? (draft.Of<Spoken>(this).By ?? RatioBy.Volume, 0);
        if (atom.Parts.Count < 2)
        {
            draft.Slip(at, 1, "says one part only: the second is missing");
        }
        else if (atom.Parts.Any(part => part == 0))
        {
            draft.Slip(at, 1, "has a part of nothing: each is above zero");
        }
        else if (atom.Parts.Max() / atom.Parts.Min() > WidestSpread)
        {
            draft.Slip(at, 1, "is too wide: the small part can't be measured");
        }
        else
        {
            Put(draft, new MixRatio(atom.Parts, by), tail > 0 || draft.Of<Spoken>(this).By is not null);
        }

        return 1 + tail;
    }

    internal override IEnumerable<Meaning> Means(MixRatio value) =>
    [
        new("ratio", value.ToString()),
        new("by", value.By == RatioBy.Mass ? "weight" : "volume"),
    ];

    internal override string Say(MixRatio value) => value + (value.By == RatioBy.Mass ? " by weight" : "");

    // 100:45 is a ratio by weight wherever the known resins have it only so, and that is said.
    private void Put(PhraseDraft draft, MixRatio ratio, bool isBasisSaid)
    {
        if (!isBasisSaid && draft.Vocabulary.RatiosByMass.Contains(ratio.ToString()))
        {
            ratio = new MixRatio(ratio.Parts, RatioBy.Mass);
            draft.Said.NoteList.Add($"{ratio} taken as by weight, as its resin has it");
        }

        draft.Said.Put(this, ratio);
    }

    private int Keep(PhraseDraft draft, RatioBy by, int taken)
    {
        draft.Of<Spoken>(this).By = by;
        return taken;
    }

    private static (RatioBy By, int Taken)? Basis(PhraseDraft draft, int at)
    {
        var lead = draft.At(at) is { } by && by.IsWord("by", "in") ? 1 : 0;
        return draft.At(at + lead) switch
        {
            { } word when word.IsWord("weight", "mass", "wt") => (RatioBy.Mass, lead + 1),
            { } word when word.IsWord("volume", "vol") => (RatioBy.Volume, lead + 1),
            _ => null,
        };
    }

    private sealed class Spoken
    {
        public RatioBy? By { get; set; }
    }
}
