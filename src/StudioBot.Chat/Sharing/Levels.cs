using StudioBot.Chat.Asking;
using StudioBot.Chat.Replies;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Sharing;

/// <summary>What is in use of each material at one moment of a record.</summary>
internal sealed class Levels
{
    private readonly Dictionary<long, Level> levels;

    /// <summary>The levels as they are now.</summary>
    public Levels(Writing writing) =>
        levels = writing.Session.Materials.Levels().ToDictionary(level => level.MaterialId);

    /// <summary>What is left of this material.</summary>
    public Amount Of(Material material) => levels[material.Id].Left;

    /// <summary>800 ml, 38 g, 80.</summary>
    public string Say(Material material) => Show.Amount(Of(material));

    /// <summary>That more of it stands in stopped lots; none where nothing does.</summary>
    public string? Stopped(Material material) => levels[material.Id].Stopped is var apart && Need.UnitsOf(apart) > 0
        ? $"Apart from it {Show.Amount(apart)} {material.Name} stopped, not counted."
        : null;

    /// <summary>That it is at the level at which it counts as low, or under it; none where it is not.</summary>
    public string? Low(Material material) =>
        material.Low is { } low && Need.UnitsOf(Of(material)) <= Need.UnitsOf(low)
            ? $"{Sentences.Capital(material.Name)} is low: its mark is {Show.Amount(low)}."
            : null;
}
