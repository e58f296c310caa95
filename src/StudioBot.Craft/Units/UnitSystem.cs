namespace StudioBot.Craft.Units;

/// <summary>Which units a person means where a word has two meanings, and is answered in.</summary>
public enum UnitSystem
{
    /// <summary>Centimetres, millilitres, degrees Celsius; spoons and ounces, where typed, are US ones.</summary>
    Metric,

    /// <summary>US customary: an ounce of liquid is a US fluid ounce, bare degrees are Fahrenheit.</summary>
    Us,

    /// <summary>Imperial: an ounce of liquid is an imperial fluid ounce.</summary>
    Imperial,
}
