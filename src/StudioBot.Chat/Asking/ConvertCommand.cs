using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Asking;

/// <summary><c>convert 8 fl oz to ml</c>: one unit in another.</summary>
internal sealed class ConvertCommand : Ask
{
    // Absolute zero (SI Brochure, 9th ed.: 0 K is −273.15 °C).
    private const double ZeroCelsius = -273.15;
    private const double ZeroFahrenheit = -459.67;

    private static readonly UnitSlot To = new() { IsRequired = true };
    private static readonly QuantitySlot Value = new() { IsRequired = true };
    private static readonly NameSlot Material = new(NameKind.Material, "material", "a material", "resin A")
    {
        IsStrict = false,
    };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "convert", Room.Asking, "One unit in another.",
        [Value, Material, To],
        ["convert 8 fl oz to ml", "convert 45 g resin A to ml", "8 fl oz in ml"])
    {
        More = "With the density used.",
        Cues =
        [
            new("how many {amount}"),
            new("in/to {amount} ml/cl/l/oz/g/kg/lb/tsp/tbsp/fl/litres/liters/pints/drops/scoops"),
            new("in/to {size} cm/mm/inches/ft/feet"),
            new("to/in {temperature} c/f/celsius/fahrenheit"),
        ],
    };

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said)
    {
        var (from, to) = (said.Of(Value).Measure, Measures(said.Of(To)));
        var word = TypedWords.Of(said)
            .LastOrDefault(typed => UnitWords.Of(typed.ToLowerInvariant())?.Name == said.Of(To))
            ?? said.Of(To);
        var isAmount = from is Measure.Volume or Measure.Mass or Measure.Ounce
            && to is Measure.Volume or Measure.Mass or Measure.Ounce;
        if (!isAmount)
        {
            return from == to ? null : new Misread(word, "measures something else", Sheet.Examples[0]);
        }

        return !said.Has(Material) && from != to && from != Measure.Ounce && to != Measure.Ounce
            ? new Misread(
                word,
                $"is {(to == Measure.Mass ? "a mass" : "a volume")}: volume and mass meet in a material, name it",
                Sheet.Examples[1])
            : null;
    }

    /// <inheritdoc/>
    internal override IEnumerable<Meaning> AlsoUnderstood(Phrase said)
    {
        var value = said.Of(Value);
        if (value.Measure != Measure.Ounce)
        {
            return [];
        }

        var fluid = said.Context.Who.Units == UnitSystem.Imperial
            ? Volume.FromImperialFluidOunces(value.Typed)
            : Volume.FromUsFluidOunces(value.Typed);
        Amount amount = IsFluid(said)
            ? new Amount.ByVolume(fluid)
            : new Amount.ByMass(Mass.FromOunces(value.Typed));
        return [AmountWords.Mean(amount)];
    }

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var value = said.Of(Value);
        if (value.Measure == Measure.Temperature)
        {
            return Degrees(value, said.Of(To));
        }

        var material = said.Has(Material)
            ? studio.View.Materials.All().First(one => one.Name == said.Of(Material))
            : null;
        var (from, to) = (UnitSize.Of(value.Unit, turn.Who, studio), UnitSize.Of(said.Of(To), turn.Who, studio));
        (from, to) = (from.Settled(IsFluid(said), turn.Who), to.Settled(IsFluid(said), turn.Who));
        var asked = from.Count(Figures.Of(value.Typed));
        if (from.Measure == to.Measure)
        {
            return Told(asked, value.Typed * from.One / to.One, said, to, [.. UnitSize.Notes(from, to, studio)]);
        }

        return MaterialTurn.Of(material!, value.Typed * from.One, from, to, turn.Who, studio) switch
        {
            (_, { } trouble) => trouble,
            ({ } turned, _) => Told(
                $"{asked} {material!.Name}", turned.Value / to.One, said, to,
                [turned.Grounds + (studio.IsSample ? " (Invented studio.)" : ""), .. UnitSize.Notes(from, to, studio)]),
            _ => throw new InvalidOperationException("A material turns volume to mass or says why not."),
        };
    }

    private static Reply Told(
        string asked, double result, Phrase said, UnitSize to, IReadOnlyList<string> notes) => new(
        [
            new Block.Headline($"{asked} = {to.Count(Show.Significant(result))}"),
            .. notes.Select(note => new Block.Line(note)),
        ],
        [new Button("The way back", $"convert {Show.Significant(result)} {to.Name} "
            + $"{(said.Has(Material) ? said.Of(Material) + " " : "")}to {said.Of(Value).Unit}")]);

    private static Reply Degrees(AnyQuantity value, string to)
    {
        if (value.Typed < (value.Unit == "f" ? ZeroFahrenheit : ZeroCelsius))
        {
            return new Reply(
                new Block.Headline(
                    $"{Figures.Of(value.Typed)} °{value.Unit.ToUpperInvariant()} is colder than cold gets."),
                new Block.Line("Try"),
                new Block.Sample("convert 70F to C"))
            {
                IsTrouble = true,
            };
        }

        var temperature = value.Unit == "f"
            ? Temperature.FromFahrenheit(value.Typed)
            : Temperature.FromCelsius(value.Typed);
        var result = to == "f" ? temperature.Fahrenheit : temperature.Celsius;
        return new Reply(
            [
                new Block.Headline($"{Figures.Of(value.Typed)} °{value.Unit.ToUpperInvariant()} = "
                    + $"{Show.Number(result)} °{to.ToUpperInvariant()}"),
            ],
            [new Button("The way back", $"convert {Show.Number(result)}{to} to {value.Unit}")]);
    }

    // Whether an ounce can only be a fluid one: beside a volume, or of a liquid for who says ounces of liquids.
    private static bool IsFluid(Phrase said) => said.Has(Material)
        ? said.Context.Who.Units != UnitSystem.Metric && said.Context.Vocabulary.Liquid.Contains(said.Of(Material))
        : said.Of(Value).Measure == Measure.Volume || Measures(said.Of(To)) == Measure.Volume;

    private static Measure? Measures(string unit) => unit == "fl oz" ? Measure.Volume : UnitWords.Of(unit)?.Measure;
}
