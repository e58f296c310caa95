using StudioBot.Craft.Costs;

namespace StudioBot.Chat.Reading.Values;

/// <summary>A sum as said.</summary>
/// <param name="Sum">How much.</param>
/// <param name="Currency">The currency where one was said.</param>
/// <param name="IsEach">Whether it is for each pack.</param>
internal sealed record Price(Money Sum, string? Currency, bool IsEach)
{
    /// <summary>What each line of a receipt costs, in the order of its amounts; empty where one sum is for all.
    /// </summary>
    public IReadOnlyList<Money> Lines { get; init; } = [];

    /// <summary>What bringing it cost beside: a part of the sum.</summary>
    public Money Postage { get; init; } = new(0);
}
