using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.House;

/// <summary><c>recipe reef 60 ml medium 20 ml white 20 ml blue mica</c>: a new recipe.</summary>
internal sealed class RecipeSet() : Unopened(records: true)
{
    private static readonly NewNameSlot Name = new("recipe", "a name", "reef") { IsRequired = true };
    private static readonly ItemsSlot Parts = new() { Key = "parts", IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "recipe", Room.House, "A new recipe.",
        [Name, Parts],
        ["recipe reef 60 ml medium 20 ml white 20 ml blue mica"]);

    /// <inheritdoc/>
    internal override IEnumerable<Meaning> AlsoUnderstood(Phrase said)
    {
        var volumes = said.Or(Parts, new ItemList([])).Items
            .Select(item => item.Amount)
            .OfType<Amount.ByVolume>()
            .ToList();
        return volumes.Count > 0
            ? [new("volume_ml", Figures.Of(volumes.Sum(volume => volume.Volume.Millilitres)))]
            : [];
    }
}
