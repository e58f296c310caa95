using StudioBot.Craft.Costs;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Reading.Values;

/// <summary>One side of a comparison: a price for a pack and a dose, or a material of the studio.</summary>
/// <param name="Material">The material's name; none where a price was said.</param>
/// <param name="Price">What a pack costs.</param>
/// <param name="Pack">How much is in it.</param>
/// <param name="Dose">How much of it colours as much as the other side's dose.</param>
/// <param name="Per">The medium that the dose colours.</param>
internal sealed record Offer(string? Material, Money? Price, Amount? Pack, Amount? Dose, Amount? Per);
