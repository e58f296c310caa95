using StudioBot.Craft.Units;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Reading.Values;

/// <summary>One amount: <c>250 ml</c>, <c>to 16 fl oz</c>, <c>318.4 g</c>.</summary>
/// <param name="what">As an error says it.</param>
/// <param name="example">One that works.</param>
internal sealed class AmountSlot(string what, string example) : Slot<Amount>(what, example)
{
    /// <summary>What a bare number means; none: a unit is needed.</summary>
    public Measure? Bare { get; init; }

    /// <summary>The one measure it must have; none: volume or mass.</summary>
    public Measure? Only { get; init; }

    /// <summary>Why spoons, scoops and drops won't do; none where they do.</summary>
    public string? NoSpoons { get; init; }

    /// <summary>Whether nothing is a useful amount.</summary>
    public bool MayBeNothing { get; init; }

    /// <summary>The word that must stand before it; none: nothing needs to.</summary>
    public string? Lead { get; init; }

    /// <summary>Words that may stand before it and go with it.</summary>
    public IReadOnlyList<string> MayLead { get; init; } = [];

    /// <summary>The front of its keys; none: <c>volume_ml</c> and <c>mass_g</c>.</summary>
    public string Key { get; init; } = "";

    internal override IReadOnlyCollection<Measure> Measures => Only is { } only ? [only] : AmountWords.Measures;

    internal override IEnumerable<string> Lexicon => Lead is { } lead ? [lead] : MayLead;

    internal override int Take(PhraseDraft draft, int at)
    {
        var lead = IsLead(draft.Atoms[at]) ? 1 : 0;
        if (draft.Said.Has(this) || (Lead is not null && lead == 0))
        {
            return 0;
        }

        if (AmountWords.Read(draft, at + lead, isLiquid: true) is { } read)
        {
            if (NoSpoons is { } why && draft.Atoms[at + lead].Unit!.IsSpoon)
            {
                draft.Slip(at + lead, read.Taken, why);
                return lead + read.Taken;
            }

            return Fits(read.Amount) ? lead + Put(draft, at + lead, read.Amount, read.Taken) : 0;
        }

        if (MayBeNothing && draft.At(at + lead) is { } nothing && nothing.IsWord("nothing", "none", "empty"))
        {
            draft.Said.Put(this, new Amount.ByVolume(default));
            return lead + 1;
        }

        return Bare is { } bare
            && draft.At(at + lead) is { IsNumber: true, IsHashed: false } number
            && (Lead is not null || IsBare(draft, at + lead + 1))
            ? lead + Put(draft, at + lead, Of(bare, number.Value), 1)
            : 0;
    }

    internal override IEnumerable<Meaning> Means(Amount value) => [AmountWords.Mean(value, Key)];

    internal override string Say(Amount value) => (Lead is { } lead ? lead + " " : "") + AmountWords.Say(value);

    private static Amount Of(Measure bare, double value) => bare == Measure.Mass
        ? new Amount.ByMass(Mass.FromGrams(value))
        : new Amount.ByVolume(Volume.FromMillilitres(value));

    private bool IsLead(Atom atom) =>
        Lead is { } needed ? atom.IsWord(needed) : atom.IsWord("to", "too") || atom.IsWord([.. MayLead]);

    private bool Fits(Amount amount) => Only switch
    {
        Measure.Volume => amount is Amount.ByVolume,
        Measure.Mass => amount is Amount.ByMass,
        _ => true,
    };

    // A bare number before an unknown word may carry a unit we do not know.
    private static bool IsBare(PhraseDraft draft, int at) =>
        draft.At(at) is not { Kind: AtomKind.Word } word
        || Fillers.Holds(word.Lower)
        || draft.Context.CommandWords.Contains(word.Lower);

    private int Put(PhraseDraft draft, int at, Amount amount, int taken)
    {
        if (AmountWords.IsAbsurd(amount))
        {
            draft.Slip(at, taken, "is more than a studio has");
        }
        else if (AmountWords.IsNothing(amount) && !MayBeNothing)
        {
            draft.Slip(at, taken, "is nothing: above zero");
        }
        else
        {
            draft.Said.Put(this, amount);
        }

        return taken;
    }
}
