using StudioBot.Craft.Costs;
using StudioBot.Records.Materials;

namespace StudioBot.Records.Stock;

/// <summary>A delivery that comes, or a mixture that is made.</summary>
/// <param name="Material">Of what.</param>
/// <param name="Bought">What came; above zero, measured as the material's form is.</param>
/// <param name="At">When it came.</param>
public sealed record NewLot(Material Material, Amount Bought, DateTimeOffset At)
{
    /// <summary>As written on it, 1 to 20 characters; none where nobody wrote one.</summary>
    public string? Label { get; init; }

    /// <summary>What all of it cost; none where unknown or made here.</summary>
    public Money? Price { get; init; }

    /// <summary>What is left of it, where books open with a lot that is in use; none: all.</summary>
    public Amount? Left { get; init; }

    /// <summary>What is left of it is worth, where books before had said; none: its part of the price.</summary>
    public Money? Worth { get; init; }

    /// <summary>When it was opened; none where nobody did.</summary>
    public DateTimeOffset? OpenedAt { get; init; }

    /// <summary>Since when it is not to be used, and why; none where it may be.</summary>
    public LotStop? Stopped { get; init; }
}
