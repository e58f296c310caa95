using StudioBot.Chat.Asking;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Sharing;

/// <summary>What is left of a material.</summary>
/// <param name="Material">Of which.</param>
/// <param name="Left">What is in use.</param>
/// <param name="Stopped">What stands in stopped lots, apart from it.</param>
internal sealed record ShelfLevel(Material Material, Amount Left, Amount Stopped)
{
    /// <summary>Whether nothing is left.</summary>
    public bool IsOut => Need.UnitsOf(Left) <= 0;

    /// <summary>Whether it is at the level at which the studio counts it as low, or under it.</summary>
    public bool IsLow => Material.Low is { } low && Need.UnitsOf(Left) <= Need.UnitsOf(low);

    /// <summary>All materials, in the order they were named.</summary>
    public static IReadOnlyList<ShelfLevel> All(Studio studio)
    {
        var levels = studio.View.Materials.Levels().ToDictionary(level => level.MaterialId);
        return [.. studio.View.Materials.All().Select(material =>
            new ShelfLevel(material, levels[material.Id].Left, levels[material.Id].Stopped))];
    }

    /// <summary>So many millilitres, grams or pieces, measured as this amount is.</summary>
    public static Amount Like(Amount amount, double units) => amount switch
    {
        Amount.ByVolume => new Amount.ByVolume(Volume.FromMillilitres(units)),
        Amount.ByMass => new Amount.ByMass(Mass.FromGrams(units)),
        _ => new Amount.ByCount((int)units),
    };
}
