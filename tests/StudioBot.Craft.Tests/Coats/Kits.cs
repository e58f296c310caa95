using StudioBot.Craft.Coats;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Coats;

/// <summary>An ordinary kit: 2:1 by volume, 1.13 and 0.97 g/mL (from memory).</summary>
internal static class Kits
{
    public static Resin Ordinary { get; } = new(
        new MixRatio([2, 1]), Density.FromGramsPerMillilitre(1.13), Density.FromGramsPerMillilitre(0.97));

    /// <summary>At 21 °C: opens 3 to 6 h, closes 12 to 24 h, handle 24 h, full cure 7 days (common practice).</summary>
    public static CureTimes Times { get; } = new(
        TimeSpan.FromHours(3),
        TimeSpan.FromHours(6),
        TimeSpan.FromHours(12),
        TimeSpan.FromHours(24),
        TimeSpan.FromHours(24),
        TimeSpan.FromDays(7),
        Temperature.FromCelsius(21));
}
