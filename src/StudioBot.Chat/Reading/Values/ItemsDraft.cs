using StudioBot.Records.Materials;

namespace StudioBot.Chat.Reading.Values;

/// <summary>A list of amounts while it is being read: an amount and a name find each other, in either order.</summary>
internal sealed class ItemsDraft
{
    private const double MostPieces = 100_000;

    private Amount? _amount;
    private int _amountAt;
    private int _amountAtoms;
    private int _packs = 1;
    private int _nameAt;

    /// <summary>The entries that are whole.</summary>
    public List<Item> Items { get; } = [];

    /// <summary>The name that waits for its amount; none where none does.</summary>
    public string? Name { get; private set; }

    /// <summary>Whether an amount waits for its name.</summary>
    public bool AwaitsName => _amount is not null;

    /// <summary>The first thing that is wrong; none where nothing is.</summary>
    public Slip? Slip { get; private set; }

    /// <summary>A name: it ends the entry of another, and completes that of an amount.</summary>
    public void TakeName(PhraseDraft draft, int at, string name, bool mayBeNothing)
    {
        if (Name is not null)
        {
            Close(draft);
        }

        (Name, _nameAt) = (name, at);
        Complete(draft, mayBeNothing);
    }

    /// <summary>An amount, in so many packs: it ends the entry of another, and completes that of a name.</summary>
    public void TakeAmount(PhraseDraft draft, int at, int taken, Amount amount, int packs, bool mayBeNothing)
    {
        if (_amount is not null)
        {
            Close(draft);
        }

        (_amount, _amountAt, _amountAtoms, _packs) = (amount, at, taken, packs);
        Complete(draft, mayBeNothing);
    }

    /// <summary>So many pieces of what is counted.</summary>
    public void TakeCount(PhraseDraft draft, int at, string name, double count)
    {
        if (count != Math.Floor(count) || count is < 0 or > MostPieces)
        {
            Blame(draft, at, 1, "is no count of pieces");
        }
        else
        {
            Items.Add(new Item(name, new Amount.ByCount((int)count)));
        }

        StartNext();
    }

    /// <summary>Ends one entry: half of one is a slip.</summary>
    public void Close(PhraseDraft draft)
    {
        if (Name is not null && _amount is null)
        {
            Slip ??= MissingAmount(draft, Name);
        }
        else if (_amount is not null && Name is null)
        {
            Slip ??= MissingName(draft, _amount);
        }

        StartNext();
    }

    private void StartNext() => (_amount, Name, _packs) = (null, null, 1);

    private void Complete(PhraseDraft draft, bool mayBeNothing)
    {
        if (_amount is null || Name is null)
        {
            return;
        }

        var amount = AmountWords.Times(_amount, _packs);
        if (AmountWords.IsAbsurd(amount))
        {
            Blame(draft, _amountAt, _amountAtoms, "is more than a studio has");
        }
        else if (AmountWords.IsNothing(amount) && !mayBeNothing)
        {
            Blame(draft, _amountAt, _amountAtoms, "is nothing to record");
        }
        else
        {
            Items.Add(new Item(Name, amount, _packs));
        }

        StartNext();
    }

    private void Blame(PhraseDraft draft, int at, int count, string why) => Slip ??= At(draft, at, count, why);

    // What stands just before the name says best why it is no amount; an amount beside it has its own slip.
    private Slip? MissingAmount(PhraseDraft draft, string name)
    {
        for (var at = _nameAt - 1; at >= Math.Max(0, _nameAt - 3); at--)
        {
            if (NearAmount(draft, at, name) is { } slip)
            {
                return slip;
            }

            if (draft.Atoms[at].Kind == AtomKind.Quantity && !draft.IsTaken(at))
            {
                return null;
            }
        }

        var isFollowed = _nameAt + 1 < draft.Atoms.Count
            && draft.Atoms[_nameAt + 1].Kind is AtomKind.Quantity or AtomKind.Number;
        return isFollowed ? null : At(draft, _nameAt, 1, "has no amount", Example(draft, "20", name));
    }

    // 20 white, twenty ml white, a bit white, 20 zorks white.
    private static Slip? NearAmount(PhraseDraft draft, int at, string name)
    {
        var near = draft.Atoms[at];
        if (near.IsNumber && !draft.IsTaken(at))
        {
            return At(draft, at, 1, "has no unit: ml or g?", Example(draft, near.Lower, name));
        }

        if (near.Kind != AtomKind.Word)
        {
            return null;
        }

        var before = at > 0 ? draft.Atoms[at - 1] : null;
        if (before is not null && UnitWords.Of(near.Lower) is not null)
        {
            return new Slip(before.Start, draft.Chunk(at - 1), "is not a number", Example(draft, "20", name));
        }

        if (Fillers.IsVague(near.Lower))
        {
            var article = before is not null && before.IsWord("a") ? 1 : 0;
            return At(draft, at - article, 1 + article, "is no amount", Example(draft, "20", name));
        }

        return before is { IsNumber: true } && !draft.IsTaken(at - 1) && !Fillers.Holds(near.Lower)
            ? At(draft, at, 1, "is no unit: ml or g?", Example(draft, before.Lower, name))
            : null;
    }

    // A stray word beside the amount is taken for the name that was meant.
    private Slip MissingName(PhraseDraft draft, Amount amount)
    {
        if (_amountAt > 0 && !draft.IsTaken(_amountAt - 1) && IsStray(draft.Atoms[_amountAt - 1]))
        {
            return NoMaterial(draft, _amountAt - 1);
        }

        for (var at = _amountAt + _amountAtoms; at < draft.Atoms.Count && MayStandBeforeName(draft.Atoms[at]); at++)
        {
            if (IsStray(draft.Atoms[at]) || draft.Atoms[at] is { Kind: AtomKind.Mark, Lower: "<" or "$" or "{" })
            {
                return NoMaterial(draft, at);
            }
        }

        var example = $"{draft.Form.Sheet.Word} {AmountWords.Say(amount)} white";
        return At(draft, _amountAt, _amountAtoms, "is of what? The material is missing", example);
    }

    private static bool IsStray(Atom atom) => atom.Kind == AtomKind.Word && !Fillers.Holds(atom.Lower);

    private static bool MayStandBeforeName(Atom atom) => atom.Kind is AtomKind.Word or AtomKind.Mark or AtomKind.Number;

    private static Slip NoMaterial(PhraseDraft draft, int at) =>
        new(draft.Atoms[at].Start, draft.Chunk(at), "is no material of this studio");

    private static string Example(PhraseDraft draft, string figure, string name) =>
        $"{draft.Form.Sheet.Word} {figure} ml {name}";

    private static Slip At(PhraseDraft draft, int at, int count, string why, string? example = null) =>
        new(draft.Atoms[at].Start, draft.Typed(at, count), why, example);
}
