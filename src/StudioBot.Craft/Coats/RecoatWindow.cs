namespace StudioBot.Craft.Coats;

/// <summary>
/// When the next coat still bonds chemically. After it: full cure, wash off blush, sand dull, wipe, coat.
/// </summary>
/// <param name="OpensFrom">The earliest it opens: a gloved finger leaves a print, no string.</param>
/// <param name="OpensBy">The latest it opens.</param>
/// <param name="ClosesFrom">The earliest it closes: the one to announce.</param>
/// <param name="ClosesBy">The latest it closes.</param>
public sealed record RecoatWindow(
    DateTimeOffset OpensFrom, DateTimeOffset OpensBy, DateTimeOffset ClosesFrom, DateTimeOffset ClosesBy)
{
    /// <summary>Surely open: opened at the latest and not closed at the earliest.</summary>
    public bool IsOpen(DateTimeOffset now) => now >= OpensBy && now < ClosesFrom;

    /// <summary>It may have closed: from here on, only a nail mark can tell.</summary>
    public bool MayHaveClosed(DateTimeOffset now) => now >= ClosesFrom;

    /// <summary>The sheet's window along a film's temperatures, cool nights and all.</summary>
    /// <param name="sheet">The sheet's hours.</param>
    /// <param name="poured">When the coat was poured.</param>
    /// <param name="film">At least one temperature; logged, then expected. The last holds on.</param>
    /// <returns>A caution beyond 15 to 30 °C or ±10 °C from the sheet; no window where the film gets colder than 10
    /// °C.</returns>
    /// <remarks>
    /// Arrhenius, integrated over each reading, at 50 and at 60 kJ/mol: the earlier and the later of both.
    /// </remarks>
    /// <exception cref="ArgumentException">There is no temperature.</exception>
    public static Finding<RecoatWindow> Of(CureTimes sheet, DateTimeOffset poured, IReadOnlyList<FilmReading> film)
    {
        var warmth = new FilmWarmth(poured, film);
        return (CureMoment.Of(warmth, sheet.OpensFrom, sheet.At), CureMoment.Of(warmth, sheet.OpensBy, sheet.At),
            CureMoment.Of(warmth, sheet.ClosesFrom, sheet.At), CureMoment.Of(warmth, sheet.ClosesBy, sheet.At)) switch
        {
            ({ } opens, { } opened, { } closes, { } closed) => CureRange.Of(
                new RecoatWindow(opens.Earliest, opened.Latest, closes.Earliest, closed.Latest),
                warmth.ColdestUntil(closed.Latest), warmth.WarmestUntil(closed.Latest), sheet.At),
            _ => CureRange.TooCold<RecoatWindow>(),
        };
    }
}
