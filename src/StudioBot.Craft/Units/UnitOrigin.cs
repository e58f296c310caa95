namespace StudioBot.Craft.Units;

/// <summary>Whose measure a unit is, where one word means different sizes.</summary>
public enum UnitOrigin
{
    /// <summary>The same everywhere.</summary>
    Any,

    /// <summary>United States customary.</summary>
    Us,

    /// <summary>British imperial; its spoons are the metric ones.</summary>
    Imperial,

    /// <summary>The round spoons of food labels: 5 and 15 mL.</summary>
    Metric,
}
