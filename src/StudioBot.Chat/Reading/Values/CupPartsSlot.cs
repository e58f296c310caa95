using StudioBot.Craft.Units;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Reading.Values;

/// <summary>Parts that are in the cup: <c>have 60 medium 25 thinner</c>, <c>120 A 60 B</c>, <c>120+60 ml</c>.</summary>
internal sealed class CupPartsSlot() : Slot<IReadOnlyList<CupPart>>("what is in the cup", "have 60 medium 25 thinner")
{
    /// <summary>The key under which they stand together.</summary>
    public string Key { get; init; } = "have";

    /// <summary>Whether each figure says its unit; else a bare one is in millilitres.</summary>
    public bool NeedsUnit { get; init; }

    internal override IReadOnlyCollection<NameKind> NameKinds => [NameKind.Material];

    internal override int Take(PhraseDraft draft, int at)
    {
        var parts = draft.Of<Draft>(this);
        if (Key == "have" && draft.Atoms[at].IsWord("have", "got") && draft.Atoms[at].Kind == AtomKind.Word)
        {
            parts.HaveAt = at;
            return 1;
        }

        if (Sum(draft, at) is { } sum)
        {
            parts.Add(draft, at, "A", sum.First);
            parts.Add(draft, at + 2, "B", sum.Second);
            return 3;
        }

        if (draft.At(at) is { Typed: > 0, Unit: { Measure: Measure.Temperature, Name: "c" } } third
            && !draft.Form.Sheet.Takes.Any(slot => slot is AirSlot))
        {
            // 80 C is no warmth here, but so much of the third part.
            parts.Add(draft, at, "C", new Amount.ByVolume(Volume.FromMillilitres(third.Typed)));
            return 1;
        }

        if (Read(draft, at) is not { } amount)
        {
            return 0;
        }

        var filler = draft.At(at + amount.Taken) is { } of && of.IsWord("of") ? 1 : 0;
        if (draft.At(at + amount.Taken + filler) is not { } named || Name(named) is not { } name)
        {
            return 0;
        }

        var behind = at + amount.Taken + filler + 1;
        var isMore = draft.At(behind) is { } more && more.IsWord("part") ? 1 : 0;
        parts.Add(draft, at, name, amount.Amount);
        return amount.Taken + filler + 1 + isMore;
    }

    internal override void Finish(PhraseDraft draft)
    {
        var parts = draft.Of<Draft>(this);
        if (draft.Slips.Count > 0)
        {
            return;
        }

        if (parts.Parts.Count == 0)
        {
            if (parts.HaveAt >= 0)
            {
                draft.Slip(parts.HaveAt, 1, "is followed by nothing: say what is in the cup");
            }

            return;
        }

        draft.Said.Put(this, parts.Parts);
    }

    internal override IEnumerable<Meaning> Means(IReadOnlyList<CupPart> value)
    {
        if (Key.Length > 0)
        {
            var parts = value.Select(part => $"{part.Name}:{AmountWords.Glued(part.Amount)}");
            yield return new(Key, string.Join('|', parts));
        }
    }

    internal override string Say(IReadOnlyList<CupPart> value)
    {
        var parts = string.Join(' ', value.Select(part => $"{AmountWords.Say(part.Amount)} {part.Name}"));
        return Key == "have" ? "have " + parts : parts;
    }

    // 120+60 ml.
    private (Amount First, Amount Second)? Sum(PhraseDraft draft, int at)
    {
        if (NeedsUnit
            || draft.At(at) is not { IsNumber: true, Value: > 0 } first
            || draft.At(at + 1)?.IsMark("+") != true
            || draft.At(at + 2) is not { Kind: AtomKind.Quantity }
            || Read(draft, at + 2) is not { } second)
        {
            return null;
        }

        Amount alike = second.Amount is Amount.ByMass
            ? new Amount.ByMass(Mass.FromGrams(first.Value))
            : new Amount.ByVolume(Volume.FromMillilitres(first.Value));
        return (alike, second.Amount);
    }

    private (Amount Amount, int Taken)? Read(PhraseDraft draft, int at)
    {
        if (!NeedsUnit
            && draft.At(at) is { IsNumber: true, IsHashed: false, Value: >= 0 } bare
            && Flaws.In(draft, at) is null)
        {
            return (new Amount.ByVolume(Volume.FromMillilitres(bare.Value)), 1);
        }

        return AmountWords.Read(draft, at, isLiquid: true);
    }

    private static string? Name(Atom atom) => atom.NameOf(NameKind.Material)?.Name
        ?? (atom.Kind == AtomKind.Word && atom.Lower is "a" or "b" or "c" ? atom.Lower.ToUpperInvariant() : null);

    private sealed class Draft
    {
        public List<CupPart> Parts { get; } = [];

        public int HaveAt { get; set; } = -1;

        public void Add(PhraseDraft draft, int at, string name, Amount amount)
        {
            if (Parts.Any(part => part.Name == name))
            {
                draft.Slip(at, 1, $"is {name} once more: one figure each");
            }
            else
            {
                Parts.Add(new CupPart(name, amount));
            }
        }
    }
}
