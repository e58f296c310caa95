using StudioBot.Craft.Costs;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Reading.Values;

/// <summary>
/// What is compared: <c>5.50/10g 1 g per 20ml</c>, or a material's name; the second stands behind vs.
/// </summary>
/// <param name="key">The front of its keys: a or b.</param>
internal sealed class OfferSlot(string key)
    : Slot<Offer>(key == "a" ? "what to compare" : "the second material", key == "a" ? "white" : "vs lamp black")
{
    internal override IReadOnlyCollection<NameKind> NameKinds => [NameKind.Material];

    internal override IReadOnlyCollection<Measure> Measures => [Measure.Volume, Measure.Mass];

    internal override int Take(PhraseDraft draft, int at)
    {
        var offer = draft.Of<Draft>(this);
        if (key == "a" && draft.Atoms[at].IsWord("vs", "versus", "against", "with", "or", "and", "to"))
        {
            offer.IsClosed = true;
            return 1;
        }

        if (offer.IsClosed)
        {
            return 0;
        }

        if (Name(draft, offer, at) + Pack(draft, offer, at) is > 0 and var taken)
        {
            return taken;
        }

        var lead = draft.Atoms[at].IsWord("per", "for") ? 1 : 0;
        return AmountWords.Read(draft, at + lead, isLiquid: true) is { } read
            ? Dose(offer, read.Amount, lead, read.Taken)
            : 0;
    }

    internal override void Finish(PhraseDraft draft)
    {
        var offer = draft.Of<Draft>(this);
        if (offer.Material is not null || (offer.Price is not null && offer.Dose is not null && offer.Per is not null))
        {
            draft.Said.Put(this, new Offer(offer.Material, offer.Price, offer.Pack, offer.Dose, offer.Per));
        }
        else if (offer.Price is not null && draft.Slips.Count == 0)
        {
            draft.Missing(offer.Dose is null
                ? "how much of it colours how much: a dose is missing"
                : "what the dose colours is missing: per 20 ml");
        }
    }

    internal override IEnumerable<Meaning> Means(Offer value)
    {
        if (value.Material is { } material)
        {
            yield return new(key, material);
            yield break;
        }

        yield return new($"{key}_money", Figures.Of((double)value.Price!.Value.Sum));
        yield return AmountWords.Mean(value.Pack!, value.Pack is Amount.ByMass ? $"{key}_mass" : key);
        yield return AmountWords.Mean(value.Dose!, $"{key}_dose");
        yield return AmountWords.Mean(value.Per!, $"{key}_per");
    }

    internal override string Say(Offer value) => (key == "b" ? "vs " : "") + (value.Material ?? Words(value));

    private static string Words(Offer value)
    {
        var (pack, dose) = (AmountWords.Say(value.Pack!), AmountWords.Say(value.Dose!));
        return $"{value.Price}/{pack} {dose} per {AmountWords.Say(value.Per!)}";
    }

    private static int Name(PhraseDraft draft, Draft offer, int at)
    {
        if (draft.Atoms[at].NameOf(NameKind.Material) is not { } name || offer.Material is not null)
        {
            return 0;
        }

        offer.Material = name.Name;
        return 1;
    }

    // 5.50/10g, €9 / 25 g.
    private static int Pack(PhraseDraft draft, Draft offer, int at)
    {
        if (offer.Price is not null
            || draft.At(at) is not { } sum
            || !(sum.IsNumber || sum.Measures(Measure.Money))
            || draft.At(at + 1) is not { } slash
            || !(slash.IsMark("/") || slash.IsWord("for", "per"))
            || AmountWords.Read(draft, at + 2, isLiquid: true) is not { } pack)
        {
            return 0;
        }

        (offer.Price, offer.Pack) = (Money.Rounded(sum.Value), pack.Amount);
        return 2 + pack.Taken;
    }

    private static int Dose(Draft offer, Amount amount, int lead, int taken)
    {
        if (offer.Price is null || (lead > 0) != (offer.Dose is not null) || offer.Per is not null)
        {
            return 0;
        }

        (offer.Dose, offer.Per) = lead > 0 ? (offer.Dose, amount) : (amount, null);
        return lead + taken;
    }

    private sealed class Draft
    {
        public bool IsClosed { get; set; }

        public string? Material { get; set; }

        public Money? Price { get; set; }

        public Amount? Pack { get; set; }

        public Amount? Dose { get; set; }

        public Amount? Per { get; set; }
    }
}
