namespace StudioBot.Chat.Reading.Values;

/// <summary>What is to be converted: <c>8 fl oz</c>, <c>45 g</c>, <c>70F</c>.</summary>
internal sealed class QuantitySlot() : Slot<AnyQuantity>("a value", "8 fl oz")
{
    internal override IReadOnlyCollection<Measure> Measures => [Measure.Volume, Measure.Mass, Measure.Length];

    internal override int Take(PhraseDraft draft, int at)
    {
        if (draft.Said.Has(this)
            || draft.At(at) is not { Kind: AtomKind.Quantity } atom
            || Flaws.In(draft, at) is not null
            || !IsConverted(atom.Unit!.Measure))
        {
            return 0;
        }

        draft.Said.Put(this, new AnyQuantity(atom.Unit.Measure, atom.Value, atom.Unit.Name, atom.Typed));
        return 1;
    }

    private static bool IsConverted(Measure measure) => measure
        is Measure.Volume or Measure.Mass or Measure.Ounce or Measure.Length or Measure.Area or Measure.Temperature;

    internal override IEnumerable<Meaning> Means(AnyQuantity value) => value.Measure switch
    {
        Measure.Volume => [new("volume_ml", Figures.Of(value.Value))],
        Measure.Mass => [new("mass_g", Figures.Of(value.Value))],
        Measure.Length => [new("length_cm", Figures.Of(value.Value))],
        Measure.Area => [new("area_cm2", Figures.Of(value.Value))],
        Measure.Temperature when value.Unit == "f" => [new("temperature_c", Figures.Of((value.Typed - 32) / 1.8))],
        Measure.Temperature => [new("temperature_c", Figures.Of(value.Typed))],
        _ => [],
    };

    internal override string Say(AnyQuantity value) => $"{Figures.Of(value.Typed)} {value.Unit}";
}
