using StudioBot.Records.Materials;

namespace StudioBot.Records.Recipes;

/// <summary>One part of a mixture.</summary>
/// <param name="MaterialId">Which material.</param>
/// <param name="Material">Its name.</param>
/// <param name="Amount">How much, by volume or by mass, never by count.</param>
public sealed record Part(long MaterialId, string Material, Amount Amount)
{
    /// <summary>So much of this material.</summary>
    public static Part Of(Material material, Amount amount) => new(material.Id, material.Name, amount);
}
