using StudioBot.Records.Materials;

namespace StudioBot.Chat.Reading.Values;

/// <summary>
/// Amounts of materials: <c>20 ml white, 2 g blue mica</c>, <c>white 430 ml</c>, <c>2 x 1 L medium</c>, <c>8 cups</c>.
/// </summary>
internal sealed class ItemsSlot() : Slot<ItemList>("an amount of a material", "20 ml white")
{
    /// <summary>Whether nothing is a useful amount: a stocktake may find none.</summary>
    public bool MayBeNothing { get; init; }

    /// <summary>Whether packs are counted: 2 x 1 L.</summary>
    public bool InPacks { get; init; }

    /// <summary>The key under which several stand together.</summary>
    public string Key { get; init; } = "items";

    internal override IReadOnlyCollection<NameKind> NameKinds => [NameKind.Material];

    internal override IReadOnlyCollection<Measure> Measures => AmountWords.Measures;

    internal override int Take(PhraseDraft draft, int at)
    {
        var list = draft.Of<ItemsDraft>(this);
        var atom = draft.Atoms[at];
        if (atom.NameOf(NameKind.Material) is { } name)
        {
            list.TakeName(draft, at, name.Name, MayBeNothing);
            return 1;
        }

        if (IsBreak(atom))
        {
            list.Close(draft);
            return 0;
        }

        if (Packs(draft, at) is { } packs)
        {
            list.TakeAmount(draft, at, packs.Taken, packs.Each, packs.Count, MayBeNothing);
            return packs.Taken;
        }

        if (AmountWords.Read(draft, at, IsLiquid(draft, at)) is { } read)
        {
            list.TakeAmount(draft, at, read.Taken, read.Amount, 1, MayBeNothing);
            return read.Taken;
        }

        return Counted(draft, list, at) is > 0 and var counted ? counted : Partial(draft, list, at);
    }

    internal override void Finish(PhraseDraft draft)
    {
        var list = draft.Of<ItemsDraft>(this);
        list.Close(draft);
        if (list.Slip is { } slip)
        {
            Explain(draft, slip);
        }
        else if (list.Items.Count > 0)
        {
            draft.Said.Put(this, new ItemList(list.Items));
        }
    }

    internal override IEnumerable<Meaning> Means(ItemList value)
    {
        if (value.Items.Count > 1 || Key != "items")
        {
            var items = value.Items.Select(item => $"{item.Material}:{AmountWords.Glued(item.Amount)}");
            yield return new(Key, string.Join('|', items));
            yield break;
        }

        var only = value.Items[0];
        yield return new("material", only.Material);
        yield return AmountWords.Mean(only.Amount);
        if (InPacks)
        {
            yield return new("count", Figures.Of(only.Packs));
            yield return AmountWords.Mean(Each(only), "pack");
        }
    }

    // A price of its own stands behind each amount.
    internal override string? Say(Phrase said)
    {
        var money = said.Form.Sheet.Takes.OfType<MoneySlot>().FirstOrDefault();
        return said.Has(this)
            ? string.Join(", ", said.Of(this).Items.Select((item, at) =>
                $"{Say(item)} {money?.SayBehind(said, at)}".TrimEnd()))
            : null;
    }

    internal override string Say(ItemList value) => string.Join(", ", value.Items.Select(Say));

    private static string Say(Item item) => item.Packs > 1
        ? $"{item.Packs} x {AmountWords.Say(Each(item))} {item.Material}"
        : $"{AmountWords.Say(item.Amount)} {item.Material}";

    private static Amount Each(Item item) => item.Amount switch
    {
        Amount.ByVolume volume => new Amount.ByVolume(volume.Volume / item.Packs),
        Amount.ByMass mass => new Amount.ByMass(mass.Mass / item.Packs),
        Amount.ByCount count => new Amount.ByCount(count.Count / item.Packs),
        _ => item.Amount,
    };

    // A slip that stands there already says more: the list may only follow from it.
    private static void Explain(PhraseDraft draft, Slip slip)
    {
        if (draft.Slips.Count == 0 || slip.Start < draft.Slips[0].Start)
        {
            draft.Slips.Insert(0, slip);
        }
    }

    private static bool IsBreak(Atom atom) => atom.Kind == AtomKind.NewLine
        || atom is { Kind: AtomKind.Mark, Lower: "," or "+" or "&" or ";" }
        || atom.IsWord("and", "plus");

    // 2 x 1 L, 2x1L, six 250ml.
    private (int Count, Amount Each, int Taken)? Packs(PhraseDraft draft, int at)
    {
        if (!InPacks
            || draft.At(at) is not { IsNumber: true, IsWhole: true, Value: >= 1 and <= 1000 } count
            || Flaws.In(draft, at) is not null)
        {
            return null;
        }

        var lead = draft.At(at + 1) is { } next && IsOfPacks(next) ? 2 : 1;
        return AmountWords.Read(draft, at + lead, isLiquid: true) is { } each
            ? ((int)count.Value, each.Amount, lead + each.Taken)
            : null;
    }

    private static bool IsOfPacks(Atom atom) =>
        SizeJoiner.IsTimes(atom) || atom.IsWord("bottles", "packs", "bags", "tubs", "of");

    // 8 cups, 40 tiles 10cm: what is counted needs no unit.
    private static int Counted(PhraseDraft draft, ItemsDraft list, int at)
    {
        if (draft.At(at) is not { Kind: AtomKind.Number or AtomKind.Quantity } atom
            || Flaws.In(draft, at) is not null
            || CountedName(draft, list, at, atom) is not { } named)
        {
            return 0;
        }

        list.TakeCount(draft, at, named.Name, atom.IsNumber ? atom.Value : atom.Typed);
        return named.Taken;
    }

    private static (string Name, int Taken)? CountedName(PhraseDraft draft, ItemsDraft list, int at, Atom atom)
    {
        if (!atom.IsNumber)
        {
            // Where cups are counted, a cup is no measure.
            return atom.Measures(Measure.Cup) && draft.Vocabulary.Match(["cup"]) is { Words: 1 } cup
                ? (cup.Names[0].Name, 1)
                : null;
        }

        if (draft.At(at + 1)?.NameOf(NameKind.Material) is { } name && draft.Context.IsCounted(name.Name))
        {
            return (name.Name, 2);
        }

        return Sized(draft, at) ?? (list.Name is { } before && draft.Context.IsCounted(before) ? (before, 1) : null);
    }

    // 40 tiles 10cm: a name with a size in it.
    private static (string Name, int Taken)? Sized(PhraseDraft draft, int at) =>
        SizedName.At(draft, at + 1) is { } name ? (name, 3) : null;

    // mica, hardener: a part of a name that fits one material only, and nothing else known.
    private int Partial(PhraseDraft draft, ItemsDraft list, int at)
    {
        if (!list.AwaitsName || draft.At(at) is not { Kind: AtomKind.Word } word)
        {
            return 0;
        }

        var fitting = draft.Vocabulary.Holding(NameKind.Material, word.Lower);
        switch (fitting.Count)
        {
            case 0:
                return 0;
            case 1:
                draft.Doubt(at, 1, $"is read as {fitting[0]}");
                list.TakeName(draft, at, fitting[0], MayBeNothing);
                return 1;
            default:
                draft.Slip(at, 1, $"fits several: {string.Join(", ", fitting)}");
                return 1;
        }
    }

    // An ounce of what is poured may be a fluid one: the nearest name tells.
    private static bool IsLiquid(PhraseDraft draft, int at)
    {
        for (var near = Math.Max(0, at - 1); near <= Math.Min(at + 3, draft.Atoms.Count - 1); near++)
        {
            if (draft.Atoms[near].NameOf(NameKind.Material) is { } name)
            {
                return draft.Context.IsLiquid(name.Name);
            }
        }

        return false;
    }
}
