using StudioBot.Chat.Asking;
using StudioBot.Chat.Replies;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Sharing;

/// <summary>What is left of each material at one moment of a record.</summary>
internal sealed class Levels
{
    private readonly Dictionary<long, Amount> left;

    /// <summary>The levels as they are now.</summary>
    public Levels(Writing writing) =>
        left = writing.Session.Materials.Levels().ToDictionary(level => level.MaterialId, level => level.Left);

    /// <summary>What is left of this material.</summary>
    public Amount Of(Material material) => left[material.Id];

    /// <summary>800 ml, 38 g, 80.</summary>
    public string Say(Material material) => Show.Amount(Of(material));

    /// <summary>That it is at the level at which it counts as low, or under it; none where it is not.</summary>
    public string? Low(Material material) =>
        material.Low is { } low && Need.UnitsOf(Of(material)) <= Need.UnitsOf(low)
            ? $"{Sentences.Capital(material.Name)} is low: its mark is {Show.Amount(low)}."
            : null;
}
