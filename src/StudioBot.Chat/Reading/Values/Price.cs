using StudioBot.Craft.Costs;

namespace StudioBot.Chat.Reading.Values;

/// <summary>A sum as said.</summary>
/// <param name="Sum">How much.</param>
/// <param name="Currency">The currency where one was said.</param>
/// <param name="IsEach">Whether it is for each pack.</param>
internal sealed record Price(Money Sum, string? Currency, bool IsEach);
