namespace StudioBot.Craft.Coats;

/// <summary>That a mix had gelled, beside what its sheet says of it.</summary>
/// <param name="After">How long after it was mixed; above zero.</param>
/// <param name="Sheet">The sheet's time, as warm as it was meanwhile; above zero.</param>
public sealed record GelReport(TimeSpan After, TimeSpan Sheet)
{
    /// <summary>How long it took, over the sheet's time.</summary>
    public double Ratio => After / Sheet;

    /// <summary>A report of what lay at these temperatures.</summary>
    /// <param name="mixed">When it was mixed.</param>
    /// <param name="gelled">When it had gelled.</param>
    /// <param name="sheet">The sheet's time at its own temperature.</param>
    /// <param name="warmth">At least one temperature; each one's time is carried to the sheet's by Arrhenius with 55
    /// kJ/mol.</param>
    /// <returns>None where it came no later than the mixing, or it was colder than 10 °C all along.</returns>
    public static GelReport? Of(
        DateTimeOffset mixed, DateTimeOffset gelled, PotLife sheet, IReadOnlyList<FilmReading> warmth)
    {
        var gone = new FilmWarmth(mixed, warmth).Gone(
            gelled, met => met.Celsius < CureRange.ColdestCelsius ? 0 : ActivationEnergy.Usual.Speed(met, sheet.At));
        return gone > TimeSpan.Zero ? new GelReport(gelled - mixed, (gelled - mixed) * (sheet.Time / gone)) : null;
    }
}
