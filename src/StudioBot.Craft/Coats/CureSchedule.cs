namespace StudioBot.Craft.Coats;

/// <summary>When a coated piece may be moved, and when it is done.</summary>
/// <param name="HandlingFrom">The earliest it may be moved.</param>
/// <param name="HandlingBy">The moment to announce: by then it surely may.</param>
/// <param name="FullCure">When it is done; no figure where the film stays too cold to finish.</param>
public sealed record CureSchedule(
    DateTimeOffset HandlingFrom, DateTimeOffset HandlingBy, Finding<DateTimeOffset> FullCure)
{
    /// <summary>Colder than this, full cure may stop short whatever the time (from memory), °C.</summary>
    public const double FullCureColdestCelsius = 18;

    /// <summary>The sheet's handling and full cure along a film's temperatures.</summary>
    /// <param name="sheet">The sheet's hours.</param>
    /// <param name="poured">When the coat was poured.</param>
    /// <param name="film">At least one temperature; logged, then expected. The last holds on.</param>
    /// <returns>A caution beyond 15 to 30 °C or ±10 °C from the sheet; nothing where it gets colder than 10 °C before
    /// handling.</returns>
    /// <remarks>Time below 18 °C counts for handling but not for full cure.</remarks>
    /// <exception cref="ArgumentException">There is no temperature.</exception>
    public static Finding<CureSchedule> Of(CureTimes sheet, DateTimeOffset poured, IReadOnlyList<FilmReading> film)
    {
        var warmth = new FilmWarmth(poured, film);
        return CureMoment.Of(warmth, sheet.Handling, sheet.At) is { } handling
            ? CureRange.Of(
                new CureSchedule(handling.Earliest, handling.Latest, Full(sheet, warmth)),
                warmth.ColdestUntil(handling.Latest), warmth.WarmestUntil(handling.Latest), sheet.At)
            : CureRange.TooCold<CureSchedule>();
    }

    private static Finding<DateTimeOffset> Full(CureTimes sheet, FilmWarmth warmth) =>
        CureMoment.Of(warmth, sheet.FullCure, sheet.At, FullCureColdestCelsius) is { } full
            ? new Finding<DateTimeOffset>.Found(full.Latest)
            : new Finding<DateTimeOffset>.None(
                NoFigure.OutOfRange,
                "below 18 °C full cure may stop short, whatever the time",
                "keep it at 18 °C or more to the end");
}
