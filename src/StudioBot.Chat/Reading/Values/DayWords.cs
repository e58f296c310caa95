namespace StudioBot.Chat.Reading.Values;

/// <summary>A day as it is said: <c>today</c>, <c>tuesday</c>, <c>28 Nov</c>, <c>2026-11-28</c>.</summary>
/// <param name="draft">The phrase it stands in.</param>
/// <param name="isPast">Whether a day without a year is the last one, as for a record, or the next.</param>
internal sealed class DayWords(PhraseDraft draft, bool isPast)
{
    private const int FirstYear = 2000;
    private const int LastYear = 2200;

    private DateTime Today => draft.Context.Local.Date;

    /// <summary>The day that begins here and its atoms; none where none does. One no calendar has is a slip.</summary>
    public (DateTime Date, int Taken)? At(int at) => draft.Atoms[at] switch
    {
        { Kind: AtomKind.Word } word => NearDay(word.Lower) ?? MonthFirst(at, word.Lower),
        { IsNumber: true, IsWhole: true } number => DayFirst(at, number) ?? Iso(at, number),
        _ => null,
    };

    private (DateTime Date, int Taken)? NearDay(string word) => word switch
    {
        "today" or "tonight" => (Today, 1),
        "yesterday" => (Today.AddDays(-1), 1),
        "tomorrow" => (Today.AddDays(1), 1),
        _ when CalendarWords.Day(word) is { } day => (OfWeek(day), 1),
        _ => null,
    };

    // Today's own name is today in a record, and in a week in a promise.
    private DateTime OfWeek(DayOfWeek day)
    {
        var ahead = ((int)day - (int)Today.DayOfWeek + 7) % 7;
        return (isPast, ahead) switch
        {
            (true, 0) => Today,
            (true, _) => Today.AddDays(ahead - 7),
            (false, 0) => Today.AddDays(7),
            (false, _) => Today.AddDays(ahead),
        };
    }

    // Nov 28; "may 3" is more likely a wish than a day.
    private (DateTime Date, int Taken)? MonthFirst(int at, string word) =>
        word != "may"
        && CalendarWords.Month(word) is { } month
        && draft.At(at + 1) is { IsNumber: true, IsWhole: true, Value: >= 1 and <= 31 } day
            ? OfMonth(at, 2, month, day.Value)
            : null;

    // 28 Nov, 28 th Nov.
    private (DateTime Date, int Taken)? DayFirst(int at, Atom day)
    {
        var suffix = draft.At(at + 1) is { } next && next.IsWord("st", "nd", "rd", "th") ? 1 : 0;
        return draft.At(at + 1 + suffix) is { Kind: AtomKind.Word } word && CalendarWords.Month(word.Lower) is { } month
            ? OfMonth(at, 2 + suffix, month, day.Value)
            : null;
    }

    private (DateTime Date, int Taken) OfMonth(int at, int taken, int month, double day)
    {
        var year = Today.Year;
        if (draft.At(at + taken) is { IsNumber: true, IsWhole: true, Value: >= FirstYear and <= LastYear } said)
        {
            year = (int)said.Value;
            taken++;
        }

        if (InCalendar(at, taken, year, month, day) is not { } date)
        {
            return (Today, taken);
        }

        var isInOtherYear = year == Today.Year && (isPast ? date > Today : date < Today);
        return (isInOtherYear ? date.AddYears(isPast ? -1 : 1) : date, taken);
    }

    // 2026-11-28.
    private (DateTime Date, int Taken)? Iso(int at, Atom year)
    {
        if (year.Value is < FirstYear or > LastYear
            || !IsDash(at + 1)
            || draft.At(at + 2) is not { IsNumber: true, IsWhole: true, Glued: true, Value: >= 1 and <= 12 } month
            || !IsDash(at + 3)
            || draft.At(at + 4) is not { IsNumber: true, IsWhole: true, Glued: true } day)
        {
            return null;
        }

        return InCalendar(at, 5, (int)year.Value, (int)month.Value, day.Value) is { } date ? (date, 5) : (Today, 5);
    }

    private bool IsDash(int at) => draft.At(at) is { Kind: AtomKind.Mark, Lower: "-", Glued: true };

    private DateTime? InCalendar(int at, int taken, int year, int month, double day)
    {
        if (day >= 1 && day <= DateTime.DaysInMonth(year, month))
        {
            return new DateTime(year, month, (int)day, 0, 0, 0, DateTimeKind.Unspecified);
        }

        draft.Slip(at, taken, "is no day of the calendar");
        return null;
    }
}
