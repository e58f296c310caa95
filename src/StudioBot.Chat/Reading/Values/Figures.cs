using System.Globalization;
using StudioBot.Craft.Units;

namespace StudioBot.Chat.Reading.Values;

/// <summary>Figures as <c>studiobot read</c> and a typed message write them.</summary>
internal static class Figures
{
    /// <summary>At most three decimals, a point, no groups.</summary>
    public static string Of(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>A length as one would type it.</summary>
    public static string Typed(Length length) => length.Centimetres < 1
        ? Of(length.Millimetres) + "mm"
        : Of(length.Centimetres) + "cm";
}
