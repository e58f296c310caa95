using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.House;

/// <summary><c>material white low 300 ml</c>: a material's density, low level or price.</summary>
internal sealed class MaterialSet() : Unopened(records: true)
{
    private static readonly NameSlot Material = new(NameKind.Material, "material", "a material", "white")
    {
        IsRequired = true,
    };
    private static readonly NumberSlot Density = new(Measure.Turns, "density", "a density", "density 0.45")
    {
        Leads = ["density"],
        TakesBare = true,
        Least = 0.05,
        Most = 20,
    };
    private static readonly AmountSlot Low = new("a low level", "300 ml") { MayLead = ["low", "level"] };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "material", Room.House, "A material's density, low level or price.",
        [Material, Density, Low],
        ["material white low 300 ml", "material silver mica density 0.45"])
    {
        Also = ["limit", "limits"],
        StewardsOnly = true,
    };

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said) => said.Has(Density) || said.Has(Low)
        ? null
        : new Misread("", "what to set is missing", Sheet.Examples[0]);
}
