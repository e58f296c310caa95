using StudioBot.Craft.Costs;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Importing;

/// <summary>A lot as a row of a file has it.</summary>
/// <param name="Line">The line of the row.</param>
/// <param name="Material">The name of its material.</param>
/// <param name="Form">The form of its material; none where the row doesn't say.</param>
/// <param name="Label">As written on it; none where nobody wrote one.</param>
/// <param name="Bought">What came.</param>
/// <param name="Left">What is left of it.</param>
/// <param name="BoughtAt">When it came.</param>
internal sealed record OpeningLot(
    int Line,
    string Material,
    MaterialForm? Form,
    string? Label,
    Amount Bought,
    Amount Left,
    DateTimeOffset BoughtAt)
{
    /// <summary>What all of it cost; none where unknown.</summary>
    public Money? Price { get; init; }

    /// <summary>What is left of it is worth; none: its part of the price.</summary>
    public Money? Worth { get; init; }

    /// <summary>When it was opened; none where nobody did.</summary>
    public DateTimeOffset? OpenedAt { get; init; }

    /// <summary>Since when it is not to be used, and why; none where it may be.</summary>
    public LotStop? Stopped { get; init; }
}
