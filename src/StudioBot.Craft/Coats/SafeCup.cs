using StudioBot.Craft.Units;

namespace StudioBot.Craft.Coats;

/// <summary>
/// How much mixed resin one cup may hold: 100 g in a cup can reach about 200 °C (a maker's safety page).
/// </summary>
public static class SafeCup
{
    private const double WarmCelsius = 26;
    private static readonly Volume Usual = Volume.FromMillilitres(300);
    private static readonly Volume WhenWarm = Volume.FromMillilitres(150);

    /// <summary>
    /// The sheet's limit, else its pot-life sample, else 300 mL, and 150 mL above 26 °C (common practice).
    /// </summary>
    public static Volume Of(Temperature room, Volume? sheetLimit = null, Volume? potLifeSample = null) =>
        sheetLimit ?? potLifeSample ?? (room.Celsius > WarmCelsius ? WhenWarm : Usual);
}
