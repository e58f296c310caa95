using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Asking;

/// <summary><c>convert 8 fl oz to ml</c>: one unit in another.</summary>
internal sealed class ConvertCommand() : Unopened(records: false)
{
    private static readonly UnitSlot To = new() { IsRequired = true };
    private static readonly QuantitySlot Value = new() { IsRequired = true };
    private static readonly NameSlot Material = new(NameKind.Material, "material", "a material", "resin A") { IsStrict = false };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "convert", Room.Asking, "One unit in another.",
        [Value, Material, To],
        ["convert 8 fl oz to ml", "convert 45 g resin A to ml", "8 fl oz in ml"])
    {
        Cues =
        [
            new("how many {amount}"),
            new("in/to {amount} ml/cl/l/oz/g/kg/lb/tsp/tbsp/fl/litres/liters/pints/drops/scoops"),
            new("in/to {size} cm/mm/inches/ft/feet"),
            new("to/in {temperature} c/f/celsius/fahrenheit"),
        ],
    };
}
