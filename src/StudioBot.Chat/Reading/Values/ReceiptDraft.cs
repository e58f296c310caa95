using StudioBot.Craft.Costs;

namespace StudioBot.Chat.Reading.Values;

/// <summary>The prices of a receipt while it is being read: each stands behind its amount.</summary>
internal sealed class ReceiptDraft
{
    private readonly SortedDictionary<int, Price> _lines = [];

    /// <summary>What bringing it cost; none where nothing was said.</summary>
    public Money? Postage { get; private set; }

    /// <summary>Whether there is more than one sum for all.</summary>
    public bool IsByLine => _lines.Count > 1 || Postage is not null;

    /// <summary>The price of the amount of this place; false where it has one.</summary>
    public bool Add(int item, Price price) => _lines.TryAdd(item, price);

    /// <summary>What bringing it cost; false where that stands there already.</summary>
    public bool AddPostage(Money sum)
    {
        var isFirst = Postage is null;
        Postage ??= sum;
        return isFirst;
    }

    /// <summary>The place of the first amount that has no price though another has; none where all have.</summary>
    public int? Unpriced(int items) =>
        Enumerable.Range(0, items).Cast<int?>().FirstOrDefault(item => !_lines.ContainsKey(item!.Value));

    /// <summary>Whether one sum stands before the last of several amounts, so that it can't be for all.</summary>
    public bool IsPartial(int items) =>
        _lines.Count == 1 && _lines.Keys.First() is >= 0 and var only && only < items - 1;

    /// <summary>All of it as one price.</summary>
    public Price Whole(IReadOnlyList<Item> items)
    {
        List<Money> lines = [.. _lines.Where(line => line.Key >= 0)
            .Select(line => new Money(line.Value.Sum.Cents * (line.Value.IsEach ? items[line.Key].Packs : 1)))];
        var postage = Postage ?? new Money(0);
        return new Price(
            new Money(lines.Sum(line => line.Cents) + postage.Cents),
            _lines.Values.Select(line => line.Currency).FirstOrDefault(currency => currency is not null),
            IsEach: false)
        {
            Lines = lines,
            Postage = postage,
        };
    }
}
