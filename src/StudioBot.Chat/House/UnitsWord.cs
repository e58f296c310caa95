using StudioBot.Craft.Units;

namespace StudioBot.Chat.House;

/// <summary>Kinds of units as a person names them.</summary>
internal static class UnitsWord
{
    /// <summary>As a reply shows it.</summary>
    public static string Of(UnitSystem units) => units switch
    {
        UnitSystem.Us => "US",
        UnitSystem.Imperial => "imperial",
        _ => "metric",
    };

    /// <summary>As it was typed: metric, us or imperial.</summary>
    public static UnitSystem Read(string word) => word switch
    {
        "us" => UnitSystem.Us,
        "imperial" => UnitSystem.Imperial,
        _ => UnitSystem.Metric,
    };
}
