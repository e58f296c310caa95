using StudioBot.Records.Materials;

namespace StudioBot.Chat.Reading.Values;

/// <summary>Amounts of materials: <c>20 ml white, 2 g blue mica</c>, <c>white 430 ml</c>, <c>2 x 1 L medium</c>, <c>8 cups</c>.</summary>
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
        var list = draft.Of<Draft>(this);
        var atom = draft.Atoms[at];
        if (atom.NameOf(NameKind.Material) is { } name)
        {
            return TakeName(draft, list, at, name.Name, 1);
        }

        if (atom.Kind is AtomKind.NewLine || (atom.Kind == AtomKind.Mark && atom.Lower is "," or "+" or "&" or ";") || atom.IsWord("and", "plus"))
        {
            list.Close(draft);
            return 0;
        }

        if (PackCount(draft, at) is { } packs && AmountWords.Read(draft, at + packs.Taken, isLiquid: true) is { } pack)
        {
            return TakeAmount(draft, list, at, packs.Taken + pack.Taken, pack.Amount, packs.Count);
        }

        if (AmountWords.Read(draft, at, IsLiquid(draft, at)) is { } read)
        {
            return TakeAmount(draft, list, at, read.Taken, read.Amount, 1);
        }

        return Counted(draft, list, at) + Partial(draft, list, at);
    }

    internal override void Finish(PhraseDraft draft)
    {
        var list = draft.Of<Draft>(this);
        list.Close(draft);
        if (draft.Slips.Count > 0 && list.Slip is not null && list.Slip.Start > draft.Slips[0].Start)
        {
            return;
        }

        if (list.Slip is { } slip)
        {
            draft.Slips.Insert(0, slip);
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
            yield return new(Key, string.Join('|', value.Items.Select(item => $"{item.Material}:{AmountWords.Glued(item.Amount)}")));
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

    internal override string Say(ItemList value) => string.Join(", ", value.Items.Select(item =>
        item.Packs > 1 ? $"{item.Packs} x {AmountWords.Say(Each(item))} {item.Material}" : $"{AmountWords.Say(item.Amount)} {item.Material}"));

    private static Amount Each(Item item) => item.Amount switch
    {
        Amount.ByVolume volume => new Amount.ByVolume(volume.Volume / item.Packs),
        Amount.ByMass mass => new Amount.ByMass(mass.Mass / item.Packs),
        Amount.ByCount count => new Amount.ByCount(count.Count / item.Packs),
        _ => item.Amount,
    };

    private int TakeName(PhraseDraft draft, Draft list, int at, string name, int taken)
    {
        if (list.Name is not null)
        {
            list.Close(draft);
        }

        (list.Name, list.NameAt) = (name, at);
        if (list.Amount is not null)
        {
            list.Add(draft, MayBeNothing);
        }

        return taken;
    }

    private int TakeAmount(PhraseDraft draft, Draft list, int at, int taken, Amount amount, int packs)
    {
        if (list.Amount is not null)
        {
            list.Close(draft);
        }

        (list.Amount, list.AmountAt, list.AmountAtoms, list.Packs) = (amount, at, taken, packs);
        if (list.Name is not null)
        {
            list.Add(draft, MayBeNothing);
        }

        return taken;
    }

    // 2 x 1 L, 2x1L, six 250ml.
    private (int Count, int Taken)? PackCount(PhraseDraft draft, int at)
    {
        if (!InPacks || draft.At(at) is not { IsNumber: true, IsWhole: true, Value: >= 1 and <= 1000 } || Flaws.In(draft, at) is not null)
        {
            return null;
        }

        var times = draft.At(at + 1) is { } next && (SizeJoiner.IsTimes(next) || next.IsWord("bottles", "packs", "bags", "tubs", "of")) ? 1 : 0;
        return draft.At(at + 1 + times) is { Kind: AtomKind.Quantity } ? ((int)draft.Atoms[at].Value, 1 + times) : null;
    }

    // 8 cups, 40 tiles 10cm: what is counted needs no unit.
    private static int Counted(PhraseDraft draft, Draft list, int at)
    {
        if (draft.At(at) is not { Kind: AtomKind.Number or AtomKind.Quantity } atom || Flaws.In(draft, at) is not null)
        {
            return 0;
        }

        if (atom.Measures(Measure.Cup) && draft.Vocabulary.Match(["cups"]).Words == 1)
        {
            list.AddWhole(draft, at, "cups", atom.Typed);
            return 1;
        }

        var name = draft.At(at + 1)?.NameOf(NameKind.Material);
        if (name is not null && atom.IsNumber && draft.Context.IsCounted(name.Name))
        {
            list.AddWhole(draft, at, name.Name, atom.Value);
            return 2;
        }

        // 40 tiles 10cm: a name with a size in it.
        if (atom.IsNumber && draft.At(at + 1) is { Kind: AtomKind.Word } noun && draft.At(at + 2) is { Kind: AtomKind.Quantity } size
            && draft.Vocabulary.Match([noun.Lower, size.Lower.Replace(" ", "", StringComparison.Ordinal)]) is { Words: 2 } sized)
        {
            list.AddWhole(draft, at, sized.Names[0].Name, atom.Value);
            return 3;
        }

        if (atom.IsNumber && list.Name is { } named && draft.Context.IsCounted(named))
        {
            list.AddWhole(draft, at, named, atom.Value);
            return 1;
        }

        return 0;
    }

    // mica, hardener: a part of a name that fits one material only, and nothing else known.
    private int Partial(PhraseDraft draft, Draft list, int at)
    {
        if (draft.At(at) is not { Kind: AtomKind.Word } word || list.Amount is null || draft.IsTaken(at))
        {
            return 0;
        }

        var fitting = draft.Vocabulary.Holding(NameKind.Material, word.Lower);
        if (fitting.Count == 1)
        {
            draft.Doubt(at, 1, $"is read as {fitting[0]}");
            return TakeName(draft, list, at, fitting[0], 1);
        }

        if (fitting.Count > 1)
        {
            draft.Slip(at, 1, $"fits several: {string.Join(", ", fitting)}");
            return 1;
        }

        return 0;
    }

    private static bool IsLiquid(PhraseDraft draft, int at)
    {
        for (var near = at - 1; near <= at + 3; near++)
        {
            if (near >= 0 && near < draft.Atoms.Count && draft.Atoms[near].NameOf(NameKind.Material) is { } name)
            {
                return draft.Context.IsLiquid(name.Name);
            }
        }

        return false;
    }

    /// <summary>The list while it is being read: an amount and a name find each other.</summary>
    private sealed class Draft
    {
        public List<Item> Items { get; } = [];

        public Amount? Amount { get; set; }

        public int AmountAt { get; set; }

        public int AmountAtoms { get; set; }

        public int Packs { get; set; } = 1;

        public string? Name { get; set; }

        public int NameAt { get; set; }

        public Slip? Slip { get; private set; }

        public void Add(PhraseDraft draft, bool mayBeNothing)
        {
            var amount = AmountWords.Times(Amount!, Packs);
            if (AmountWords.IsAbsurd(amount))
            {
                Blame(draft, AmountAt, AmountAtoms, "is more than a studio has");
            }
            else if (AmountWords.IsNothing(amount) && !mayBeNothing)
            {
                Blame(draft, AmountAt, AmountAtoms, "is nothing to record");
            }
            else
            {
                Items.Add(new Item(Name!, amount, Packs));
            }

            (Amount, Name, Packs) = (null, null, 1);
        }

        public void AddWhole(PhraseDraft draft, int at, string name, double count)
        {
            if (count != Math.Floor(count) || count is < 0 or > 100_000)
            {
                Blame(draft, at, 1, "is no count of pieces");
            }
            else
            {
                Items.Add(new Item(name, new Amount.ByCount((int)count)));
            }

            (Amount, Name, Packs) = (null, null, 1);
        }

        /// <summary>Ends one entry: half of one is a slip.</summary>
        public void Close(PhraseDraft draft)
        {
            if (Name is not null && Amount is null)
            {
                NoAmount(draft);
            }
            else if (Amount is not null && Name is null)
            {
                NoName(draft);
            }

            (Amount, Name, Packs) = (null, null, 1);
        }

        private void NoAmount(PhraseDraft draft)
        {
            for (var at = NameAt - 1; at >= Math.Max(0, NameAt - 3); at--)
            {
                var before = draft.Atoms[at];
                if (before.IsNumber && !draft.IsTaken(at))
                {
                    Blame(draft, at, 1, "has no unit: ml or g?", $"{draft.Form.Sheet.Word} {before.Lower} ml {Name}");
                    return;
                }

                if (before.Kind == AtomKind.Word && at > 0 && UnitWords.Of(before.Lower) is not null)
                {
                    Slip ??= new Slip(draft.Atoms[at - 1].Start, draft.Chunk(at - 1), "is not a number", $"{draft.Form.Sheet.Word} 20 ml {Name}");
                    return;
                }

                if (before.Kind == AtomKind.Word && Fillers.IsVague(before.Lower))
                {
                    var article = at > 0 && draft.Atoms[at - 1].IsWord("a") ? 1 : 0;
                    Blame(draft, at - article, 1 + article, "is no amount", $"{draft.Form.Sheet.Word} 20 ml {Name}");
                    return;
                }

                if (before.Kind == AtomKind.Word && at > 0 && draft.Atoms[at - 1].IsNumber && !draft.IsTaken(at - 1) && !Fillers.Holds(before.Lower))
                {
                    Blame(draft, at, 1, "is no unit: ml or g?", $"{draft.Form.Sheet.Word} {draft.Atoms[at - 1].Lower} ml {Name}");
                    return;
                }

                if (before.Kind == AtomKind.Quantity && !draft.IsTaken(at))
                {
                    return;
                }
            }

            if (NameAt + 1 < draft.Atoms.Count && draft.Atoms[NameAt + 1].Kind is AtomKind.Quantity or AtomKind.Number)
            {
                return;
            }

            Blame(draft, NameAt, 1, "has no amount", $"{draft.Form.Sheet.Word} 20 ml {Name}");
        }

        private void NoName(PhraseDraft draft)
        {
            if (AmountAt > 0 && !draft.IsTaken(AmountAt - 1) && draft.Atoms[AmountAt - 1] is { Kind: AtomKind.Word } before && !Fillers.Holds(before.Lower))
            {
                Slip ??= new Slip(before.Start, draft.Chunk(AmountAt - 1), "is no material of this studio");
                return;
            }

            for (var at = AmountAt + AmountAtoms; at < draft.Atoms.Count && draft.Atoms[at].Kind is AtomKind.Word or AtomKind.Mark or AtomKind.Number; at++)
            {
                var atom = draft.Atoms[at];
                if (atom.Kind == AtomKind.Mark && atom.Lower is "<" or "$" or "{" || (atom.Kind == AtomKind.Word && !Fillers.Holds(atom.Lower)))
                {
                    Slip ??= new Slip(atom.Start, draft.Chunk(at), "is no material of this studio");
                    return;
                }
            }

            Blame(draft, AmountAt, AmountAtoms, "is of what? The material is missing", $"{draft.Form.Sheet.Word} {AmountWords.Say(Amount!)} white");
        }

        private void Blame(PhraseDraft draft, int at, int count, string why, string? example = null) =>
            Slip ??= new Slip(draft.Atoms[at].Start, draft.Typed(at, count), why, example);
    }
}
