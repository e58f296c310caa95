using System.Diagnostics.CodeAnalysis;
using StudioBot.Records.Materials;

namespace StudioBot.Records.Stock;

/// <summary>What came of drawing from stock.</summary>
public abstract record Drawn
{
    private Drawn()
    {
    }

    /// <summary>Booked, from these lots in this order.</summary>
    public sealed record Taken(IReadOnlyList<LotShare> FromLots) : Drawn;

    /// <summary>Nothing booked: so much is missing.</summary>
    [SuppressMessage("Naming", "CA1720", Justification = "Running short is the trade's word for it.")]
    public sealed record Short(Amount Missing) : Drawn;
}
