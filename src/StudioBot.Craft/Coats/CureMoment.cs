using StudioBot.Craft.Units;

namespace StudioBot.Craft.Coats;

/// <summary>When a film has gone as far as its sheet's time would take it, at 50 and at 60 kJ/mol.</summary>
internal sealed record CureMoment(DateTimeOffset Earliest, DateTimeOffset Latest)
{
    /// <summary>
    /// The earlier and the later of both; null when the film stays colder than <paramref name="coldest"/>, °C.
    /// </summary>
    public static CureMoment? Of(
        FilmWarmth film, TimeSpan needed, Temperature sheet, double coldest = CureRange.ColdestCelsius) =>
        (At(film, needed, sheet, coldest, ActivationEnergy.Low),
            At(film, needed, sheet, coldest, ActivationEnergy.High)) switch
        {
            ({ } low, { } high) when low < high => new CureMoment(low, high),
            ({ } low, { } high) => new CureMoment(high, low),
            _ => null,
        };

    private static DateTimeOffset? At(
        FilmWarmth film, TimeSpan needed, Temperature sheet, double coldest, ActivationEnergy energy) =>
        film.Reaches(needed, met => met.Celsius < coldest ? 0 : energy.Speed(met, sheet));
}
