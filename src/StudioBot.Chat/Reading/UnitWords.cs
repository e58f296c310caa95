using StudioBot.Craft.Units;

namespace StudioBot.Chat.Reading;

/// <summary>The units that people type, in all their spellings.</summary>
internal static class UnitWords
{
    private static readonly Dictionary<string, Unit> ByWord = Spell(
    [
        (Measure.Length, 1, "cm", "cms centimetre centimetres centimeter centimeters"),
        (Measure.Length, 0.1, "mm", "millimetre millimetres millimeter millimeters"),
        (Measure.Length, 100, "m", "metre metres meter meters"),
        (Measure.Length, 2.54, "in", "inch inches"),
        (Measure.Length, 30.48, "ft", "foot feet"),
        (Measure.Area, 1, "cm2", "sqcm"),
        (Measure.Area, 10_000, "m2", "sqm"),
        (Measure.Area, 6.4516, "in2", "sqin"),
        (Measure.Volume, 1, "ml", "mls millilitre millilitres milliliter milliliters cc"),
        (Measure.Volume, 10, "cl", "centilitre centilitres centiliter centiliters"),
        (Measure.Volume, 100, "dl", "decilitre decilitres deciliter deciliters"),
        (Measure.Volume, 1000, "l", "litre litres liter liters ltr"),
        (Measure.Volume, Volume.FromUsFluidOunces(1).Millilitres, "fl oz", "floz"),
        (Measure.Volume, 4.92892159375, "tsp", "tsps teaspoon teaspoons"),
        (Measure.Volume, 14.78676478125, "tbsp", "tbsps tablespoon tablespoons"),
        (Measure.Volume, 473.176473, "pint", "pints pt"),
        (Measure.Volume, 946.352946, "quart", "quarts qt"),
        (Measure.Volume, 3785.411784, "gallon", "gallons gal"),
        (Measure.Volume, 0.05, "drop", "drops"),
        (Measure.Volume, 20, "scoop", "scoops"),
        (Measure.Volume, 5, "spoon", "spoons spoonful spoonfuls"),
        (Measure.Mass, 1, "g", "gr gm gms gram grams gramme grammes"),
        (Measure.Mass, 1000, "kg", "kgs kilo kilos kilogram kilograms"),
        (Measure.Mass, 0.001, "mg", "milligram milligrams"),
        (Measure.Mass, Mass.FromPounds(1).Grams, "lb", "lbs pound pounds"),
        (Measure.Ounce, Mass.FromOunces(1).Grams, "oz", "ounce ounces"),
        (Measure.Cup, 1, "cup", ""),
        (Measure.Temperature, 1, "c", "celsius centigrade"),
        (Measure.Temperature, 1, "f", "fahrenheit"),
        (Measure.Degrees, 1, "deg", "degs degree degrees"),
        (Measure.Percent, 1, "percent", "pct rh"),
        (Measure.Time, 1, "s", "sec secs second seconds"),
        (Measure.Time, 60, "min", "mins minute minutes"),
        (Measure.Time, 3600, "h", "hr hrs hour hours"),
        (Measure.Time, 86_400, "day", "days d"),
        (Measure.Time, 604_800, "week", "weeks wks"),
        (Measure.Turns, 1, "rpm", "revs"),
        (Measure.Money, 1, "eur", "euro euros"),
        (Measure.Money, 1, "usd", "dollar dollars bucks"),
        (Measure.Money, 1, "gbp", "quid"),
        (Measure.Clock, 60, "am", ""),
        (Measure.Clock, 60, "pm", ""),
    ]);

    /// <summary>The unit of this word, in lower case; none where it is none.</summary>
    public static Unit? Of(string word) => ByWord.GetValueOrDefault(word);

    /// <summary>The currency of a sign; none where it is none.</summary>
    public static Unit? OfSign(string mark) => mark switch
    {
        "€" => ByWord["eur"],
        "$" => ByWord["usd"],
        "£" => ByWord["gbp"],
        _ => null,
    };

    private static Dictionary<string, Unit> Spell((Measure Measure, double Factor, string Name, string Also)[] rows)
    {
        var words = new Dictionary<string, Unit>();
        foreach (var (measure, factor, name, also) in rows)
        {
            var unit = new Unit(measure, factor, name);
            words[name] = unit;
            foreach (var word in also.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                words[word] = unit;
            }
        }

        return words;
    }
}
