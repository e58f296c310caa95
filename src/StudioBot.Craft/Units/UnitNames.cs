namespace StudioBot.Craft.Units;

/// <summary>
/// The units people type. <c>cup</c> is missing on purpose: cups differ. <c>oz</c> is the mass; whether a liquid's
/// <c>oz</c> was meant as <c>fl oz</c> is for the reader of the message to ask.
/// </summary>
public static class UnitNames
{
    private const string Si = "SI";
    private const string LabelRule = "16 CFR 500.19";
    private const string FluidOunces = "fluid ounces: US 29.5735295625 mL, imperial 28.4130625 mL";
    private const string UsSpoons = "US teaspoon = 1/6, tablespoon = 1/2 US fluid ounce";
    private const string MetricSpoons = "21 CFR 101.9: teaspoon 5 mL, tablespoon 15 mL";

    private static readonly Volume UsOunce = Volume.FromUsFluidOunces(1);
    private static readonly Volume ImperialOunce = Volume.FromImperialFluidOunces(1);

    /// <summary>A scoop of 20 mL (common practice) until the studio sets its own.</summary>
    public static UnitName.OfVolume Scoop { get; } =
        new("scoop", ["scoop", "scoops"], Volume.FromMillilitres(20), UnitOrigin.Any, "common practice");

    /// <summary>A drop of water, 20 to the millilitre; paint and oil drop up to a quarter larger or smaller.</summary>
    public static UnitName.OfVolume Drop { get; } =
        new("drop", ["drop", "drops"], Volume.FromMillilitres(0.05), UnitOrigin.Any, "USP <1101>: 45 to 55 mg of water")
        {
            Spread = 0.25,
        };

    /// <summary>Every unit; words of several units of one size class stand once in each system.</summary>
    public static IReadOnlyList<UnitName> All { get; } =
    [
        Long("mm", ["mm", "millimetre", "millimetres", "millimeter", "millimeters"], Length.FromMillimetres(1), Si),
        Long("cm", ["cm", "centimetre", "centimetres", "centimeter", "centimeters"], Length.FromCentimetres(1), Si),
        Long("m", ["m", "metre", "metres", "meter", "meters"], Length.FromMetres(1), Si),
        Long("in", ["in", "inch", "inches", "\"", "″"], Length.FromInches(1), LabelRule),
        Long("ft", ["ft", "foot", "feet", "'", "′"], Length.FromFeet(1), LabelRule),

        Full("ml", ["ml", "millilitre", "millilitres", "milliliter", "milliliters", "cc"], 1),
        Full("cl", ["cl", "centilitre", "centilitres", "centiliter", "centiliters"], 10),
        Full("dl", ["dl", "decilitre", "decilitres", "deciliter", "deciliters"], 100),
        Full("L", ["l", "litre", "litres", "liter", "liters"], 1000),
        .. BothWays("fl oz", ["fl oz", "floz", "fluid ounce", "fluid ounces"], 1, 1),
        .. BothWays("pint", ["pint", "pints", "pt"], 16, 20),
        .. BothWays("quart", ["quart", "quarts", "qt"], 32, 40),
        .. BothWays("gallon", ["gallon", "gallons", "gal"], 128, 160),
        .. Spoon("tsp", ["tsp", "tsps", "teaspoon", "teaspoons"], UsOunce / 6, 5),
        .. Spoon("tbsp", ["tbsp", "tbsps", "tablespoon", "tablespoons"], UsOunce / 2, 15),
        Scoop,
        Drop,

        Heavy("mg", ["mg", "milligram", "milligrams"], Mass.FromGrams(0.001), Si),
        Heavy("g", ["g", "gram", "grams", "gramme", "grammes"], Mass.FromGrams(1), Si),
        Heavy("kg", ["kg", "kilo", "kilos", "kilogram", "kilograms"], Mass.FromKilograms(1), Si),
        Heavy("oz", ["oz", "ounce", "ounces"], Mass.FromOunces(1), LabelRule),
        Heavy("lb", ["lb", "lbs", "pound", "pounds"], Mass.FromPounds(1), LabelRule),
    ];

    /// <summary>The unit this word means to a person of this system; null when no unit is called so.</summary>
    /// <param name="word">As typed; case does not matter.</param>
    /// <param name="system">Decides only where a word has several sizes; US where nothing else is set.</param>
    public static UnitName? Find(string word, UnitOrigin system = UnitOrigin.Us)
    {
        var named = All
            .Where(unit => unit.Spellings.Contains(word, StringComparer.OrdinalIgnoreCase))
            .ToList();

        return named.Find(unit => unit.System == system)
            ?? named.Find(unit => unit.System is UnitOrigin.Metric && system is UnitOrigin.Imperial)
            ?? named.FirstOrDefault();
    }

    private static UnitName.OfLength Long(string name, string[] spellings, Length one, string source) =>
        new(name, spellings, one, UnitOrigin.Any, source);

    private static UnitName.OfMass Heavy(string name, string[] spellings, Mass one, string source) =>
        new(name, spellings, one, UnitOrigin.Any, source);

    private static UnitName.OfVolume Full(string name, string[] spellings, double millilitres) =>
        new(name, spellings, Volume.FromMillilitres(millilitres), UnitOrigin.Any, Si);

    private static UnitName.OfVolume[] BothWays(string name, string[] spellings, int usOunces, int imperialOunces) =>
    [
        new("US " + name, Also("us", spellings), usOunces * UsOunce, UnitOrigin.Us, FluidOunces),
        new(
            "imperial " + name,
            [.. Also("imperial", spellings), .. Prefixed("imp", spellings), .. Prefixed("uk", spellings)],
            imperialOunces * ImperialOunce,
            UnitOrigin.Imperial,
            FluidOunces),
    ];

    private static UnitName.OfVolume[] Spoon(string name, string[] spellings, Volume us, double millilitres) =>
    [
        new("US " + name, Also("us", spellings), us, UnitOrigin.Us, UsSpoons),
        new(
            "metric " + name,
            Also("metric", spellings),
            Volume.FromMillilitres(millilitres),
            UnitOrigin.Metric,
            MetricSpoons),
    ];

    private static string[] Also(string system, string[] spellings) => [.. spellings, .. Prefixed(system, spellings)];

    private static IEnumerable<string> Prefixed(string system, string[] spellings) =>
        spellings.Select(spelling => $"{system} {spelling}");
}
