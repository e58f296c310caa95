using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.House;

/// <summary><c>material new pearl white 500 ml 14.00</c>: a new material.</summary>
internal sealed class MaterialNew() : Unopened(records: true)
{
    private static readonly NewNameSlot Name = new("material", "a name", "new pearl white")
    {
        Lead = "new",
        IsRequired = true,
    };
    private static readonly AmountSlot Pack = new("a pack", "500 ml") { Key = "pack" };
    private static readonly MoneySlot Price = new();

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "material", Room.House, "A new material.",
        [Name, Pack, Price],
        ["material new pearl white 500 ml 14.00"])
    {
        StewardsOnly = true,
    };
}
