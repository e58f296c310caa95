namespace StudioBot.Craft.Stock;

/// <summary>How long what is left will last.</summary>
public static class Forecast
{
    private const double LongestDays = 36500;

    /// <summary>Level over daily use, the amounts already booked taken off first.</summary>
    /// <param name="level">What is left, in the material's own unit.</param>
    /// <param name="use">What a day takes.</param>
    /// <param name="booked">Known demand to come: a workshop's share.</param>
    /// <returns>A caution on little data or when the booked amount alone is more than there is; no figure without use
    /// or on a negative level.</returns>
    public static Finding<TimeSpan> DaysOfCover(double level, DailyUse use, double booked = 0)
    {
        if (!(level >= 0))
        {
            return new Finding<TimeSpan>.None(
                NoFigure.OutOfRange, "the book shows less than nothing", "count it");
        }

        if (level < booked)
        {
            return new Finding<TimeSpan>.Cautioned(TimeSpan.Zero, "what is booked is more than there is");
        }

        if (use.PerDay <= 0 || (level - booked) / use.PerDay > LongestDays)
        {
            return new Finding<TimeSpan>.None(
                NoFigure.Undetermined, "no use lately", "it lasts until it is used again");
        }

        var days = TimeSpan.FromDays((level - booked) / use.PerDay);
        return use.IsLittleData
            ? new Finding<TimeSpan>.Cautioned(days, "little data: fewer than 5 uses")
            : new Finding<TimeSpan>.Found(days);
    }
}
