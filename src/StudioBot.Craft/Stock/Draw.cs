using System.Diagnostics.CodeAnalysis;

namespace StudioBot.Craft.Stock;

/// <summary>What comes of taking something from stock.</summary>
public abstract record Draw
{
    private Draw()
    {
    }

    /// <summary>Taken, from these lots in this order.</summary>
    public sealed record Taken(IReadOnlyList<LotPortion> FromLots) : Draw;

    /// <summary>Not taken: so much is missing, in the book's whole units.</summary>
    [SuppressMessage("Naming", "CA1720", Justification = "Running short is the trade's word for it.")]
    public sealed record Short(long Missing) : Draw;

    /// <summary>
    /// All of it from the open lots, the first in the list first; stopped lots are passed over. All or nothing.
    /// </summary>
    /// <param name="lots">Oldest first.</param>
    /// <param name="amount">In the book's whole units, above zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">Nothing is asked for.</exception>
    public static Draw From(IReadOnlyList<OpenLot> lots, long amount)
    {
        if (amount <= 0)
        {
            throw new ArgumentOutOfRangeException(nameof(amount), amount, "What is drawn is above zero.");
        }

        List<LotPortion> portions = [];
        foreach (var lot in lots.Where(lot => lot is { IsStopped: false, Left: > 0 }))
        {
            var portion = Math.Min(amount, lot.Left);
            portions.Add(new LotPortion(lot, portion));
            amount -= portion;
            if (amount == 0)
            {
                return new Taken(portions);
            }
        }

        return new Short(amount);
    }
}
