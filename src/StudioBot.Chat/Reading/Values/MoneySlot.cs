using StudioBot.Craft.Costs;

namespace StudioBot.Chat.Reading.Values;

/// <summary>A sum of money: <c>24.90</c>, <c>€85,50</c>, <c>for 85</c>, <c>18 each</c>.</summary>
/// <param name="packs">The slot whose packs <c>each</c> multiplies; none where nothing comes in packs.</param>
internal sealed class MoneySlot(ItemsSlot? packs = null) : Slot<Price>("a sum of money", "24.90")
{
    private const double Most = 10_000_000;

    internal override IReadOnlyCollection<Measure> Measures => [Measure.Money];

    internal override bool TakesAnything => true;

    internal override int Take(PhraseDraft draft, int at)
    {
        var isPostage = packs is not null && draft.Atoms[at].IsWord("postage", "shipping");
        var lead = isPostage || draft.Atoms[at].IsWord("for") ? 1 : 0;
        if ((draft.Said.Has(this) && packs is null) || draft.At(at + lead) is not { } atom)
        {
            return 0;
        }

        if (atom.IsWord("free") && packs is not null)
        {
            draft.Slip(at + lead, 1, "is no price: say 0 or leave it out");
            return lead + 1;
        }

        if (!(atom.IsNumber && !atom.IsHashed && IsBare(draft, at + lead + 1)) && !atom.Measures(Measure.Money))
        {
            return 0;
        }

        if (Wrong(atom) is { } why)
        {
            draft.Slip(at + lead, 1, why);
            return lead + 1;
        }

        var isSum = atom is { Flaw: NumberFlaw.None or NumberFlaw.TwoReadings, Typed: >= 0 };
        return isSum && Put(draft, at + lead, atom, isPostage) is > 0 and var taken ? lead + taken : 0;
    }

    // A figure that is none at all, or below zero, has its own slip.
    private static string? Wrong(Atom atom) => atom switch
    {
        { Flaw: NumberFlaw.Absurd } => "is no sum of money",
        { Flaw: not (NumberFlaw.None or NumberFlaw.TwoReadings) } or { Typed: < 0 } => null,
        { Value: > Most } => "is no sum of money",
        _ when Math.Abs(atom.Value * 100 - Math.Round(atom.Value * 100)) > 1e-6 =>
            "has too many places: money has two at most",
        _ => null,
    };

    internal override void Finish(PhraseDraft draft)
    {
        if (packs is null || !draft.Said.Has(this) || !draft.Said.Has(packs))
        {
            return;
        }

        var (price, items, receipt) =
            (draft.Said.Of(this), draft.Said.Of(packs).Items, draft.Of<ReceiptDraft>(this));
        if (receipt.IsByLine || receipt.IsPartial(items.Count))
        {
            if (receipt.Unpriced(items.Count) is { } item)
            {
                draft.Missing($"{items[item].Material} has no price: each line has its own");
            }
            else
            {
                draft.Said.Put(this, receipt.Whole(items));
            }
        }
        else if (price.IsEach)
        {
            var count = items.Sum(item => item.Packs);
            draft.Said.Put(this, price with { Sum = new Money(price.Sum.Cents * count), IsEach = false });
        }
    }

    internal override IEnumerable<Meaning> Means(Price value)
    {
        yield return new("money", Figures.Of((double)value.Sum.Sum));
        if (value.Currency is { } currency)
        {
            yield return new("currency", currency);
        }
    }

    internal override string? Say(Phrase said) => IsByLine(said) ? null : base.Say(said);

    /// <summary>The price behind each amount, as it is read back; none where one sum is for all.</summary>
    public string? SayBehind(Phrase said, int item) => IsByLine(said) && said.Of(this) is var price
        ? price.Lines[item] + (item == price.Lines.Count - 1 && price.Postage.Cents > 0
            ? $", postage {price.Postage}"
            : "")
        : null;

    private bool IsByLine(Phrase said) => said.Has(this) && said.Of(this).Lines.Count > 0;

    internal override string Say(Price value) =>
        value.Currency is { } currency ? $"{value.Sum} {currency}" : value.Sum.ToString();

    // A number before a noun or a unit of another kind is no price.
    private static bool IsBare(PhraseDraft draft, int at) => draft.At(at) is not { } next
        || !(next.Kind is AtomKind.Quantity or AtomKind.Number && next.Glued)
        && !next.IsWord("people", "days", "day", "coats", "coat", "colours", "colors");

    private int Put(PhraseDraft draft, int at, Atom atom, bool isPostage)
    {
        var taken = 1;
        var currency = atom.Unit?.Name.ToUpperInvariant();
        if (draft.At(at + taken) is { Kind: AtomKind.Word } word
            && UnitWords.Of(word.Lower) is { Measure: Measure.Money } unit)
        {
            currency = unit.Name.ToUpperInvariant();
            taken++;
        }

        var isEach = draft.At(at + taken) is { } each && each.IsWord("each", "apiece", "ea");
        var price = new Price(Money.Rounded(atom.Value), currency, isEach);
        if (packs is not null && !Kept(draft, price, isPostage))
        {
            return 0;
        }

        if (!draft.Said.Has(this))
        {
            draft.Said.Put(this, price);
        }

        return taken + (isEach ? 1 : 0);
    }

    // A price is of the amount before it; a second one for the same has no place.
    private bool Kept(PhraseDraft draft, Price price, bool isPostage)
    {
        var receipt = draft.Of<ReceiptDraft>(this);
        return isPostage
            ? receipt.AddPostage(price.Sum)
            : receipt.Add(draft.Of<ItemsDraft>(packs!).Items.Count - 1, price);
    }
}
