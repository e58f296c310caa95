using System.Globalization;

namespace StudioBot.Chat.Reading.Values;

/// <summary>A day, and an hour where one was said: <c>tuesday</c>, <c>28 Nov 10am</c>, <c>fri 18:00</c>, <c>in 2h</c>.</summary>
/// <param name="isPast">Whether a weekday is the last one, as for a record, or the next.</param>
/// <param name="key">The key under which it is understood.</param>
internal sealed class WhenSlot(bool isPast, string key) : Slot<DateTime>("a day", isPast ? "tuesday" : "fri 18:00")
{
    private static readonly string[] Months =
        ["january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november", "december"];

    private static readonly string[] Days = ["sunday", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday"];

    internal override IEnumerable<string> Lexicon => Days.Concat(Months).Concat(["tomorrow", "yesterday"]).Where(word => word.Length > 5);

    internal override int Take(PhraseDraft draft, int at)
    {
        if (draft.Said.Has(this))
        {
            return 0;
        }

        var lead = draft.Atoms[at].IsWord("on", "at", "last", "next", "by", "this") ? 1 : 0;
        if (draft.At(at + lead) is null)
        {
            return 0;
        }

        var now = draft.Context.Local;
        if (Day(draft, at + lead, now) is { } day)
        {
            var behind = at + lead + day.Taken;
            behind += draft.At(behind) is { } between && between.IsWord("at") ? 1 : 0;
            var clock = Clock(draft, behind);
            Put(draft, day.Date + (clock?.Time ?? TimeSpan.Zero));
            return clock is { } said ? behind + said.Taken - at : lead + day.Taken;
        }

        if (key.Length > 0 && Clock(draft, at + lead) is { } only)
        {
            var today = now.Date + only.Time;
            Put(draft, !isPast && today <= now ? today.AddDays(1) : today);
            return lead + only.Taken;
        }

        if (!isPast && Later(draft, at + lead) is { } later && draft.Atoms[at].IsWord("in"))
        {
            Put(draft, now + later);
            return 2;
        }

        return 0;
    }

    internal override IEnumerable<Meaning> Means(DateTime value) =>
        [new(key, value.ToString(value.TimeOfDay == TimeSpan.Zero ? "yyyy-MM-dd" : "yyyy-MM-ddTHH:mm", CultureInfo.InvariantCulture))];

    internal override string Say(DateTime value) =>
        value.ToString(value.TimeOfDay == TimeSpan.Zero ? "d MMM yyyy" : "d MMM yyyy HH:mm", CultureInfo.InvariantCulture);

    /// <summary>The number of the month of this name, 1 to 12; none where it is none.</summary>
    public static int? Month(string word)
    {
        var month = Array.FindIndex(Months, name => word.Length >= 3 && (name == word || (word.Length <= 4 && name.StartsWith(word, StringComparison.Ordinal))));
        return month < 0 ? null : month + 1;
    }

    private void Put(PhraseDraft draft, DateTime when) => draft.Said.Put(this, when);

    private (DateTime Date, int Taken)? Day(PhraseDraft draft, int at, DateTime now)
    {
        var atom = draft.Atoms[at];
        if (atom.Kind == AtomKind.Fraction && key.Length > 0 && atom.Parts.All(part => part is >= 1 and <= 31))
        {
            draft.Slip(at, 1, "is two days: write the month's name", $"{draft.Form.Sheet.Word} … {atom.Parts[0]} Nov");
            return (now.Date, 1);
        }

        if (atom.Kind == AtomKind.Word)
        {
            return Word(draft, at, now);
        }

        if (!atom.IsNumber || !atom.IsWhole)
        {
            return null;
        }

        var suffix = draft.At(at + 1) is { } th && th.IsWord("st", "nd", "rd", "th") ? 1 : 0;
        return draft.At(at + 1 + suffix) is { Kind: AtomKind.Word } month && Month(month.Lower) is { } number
            ? Date(draft, at, 2 + suffix, number, atom.Value, now)
            : Iso(draft, at);
    }

    private (DateTime Date, int Taken)? Word(PhraseDraft draft, int at, DateTime now)
    {
        var word = draft.Atoms[at].Lower;
        switch (word)
        {
            case "today" or "tonight":
                return (now.Date, 1);
            case "yesterday":
                return (now.Date.AddDays(-1), 1);
            case "tomorrow" when !isPast:
                return (now.Date.AddDays(1), 1);
        }

        var day = Array.FindIndex(Days, name => name == word || (word.Length is >= 3 and <= 5 && name.StartsWith(word, StringComparison.Ordinal)));
        if (day >= 0)
        {
            var ahead = (day - (int)now.DayOfWeek + 7) % 7;
            return (now.Date.AddDays(isPast ? (ahead == 0 ? 0 : ahead - 7) : ahead == 0 ? 7 : ahead), 1);
        }

        return Month(word) is { } month && word is not "may" && draft.At(at + 1) is { IsNumber: true, IsWhole: true, Value: >= 1 and <= 31 } number
            ? Date(draft, at, 2, Month(word)!.Value, number.Value, now)
            : null;
    }

    private (DateTime Date, int Taken)? Date(PhraseDraft draft, int at, int taken, int month, double day, DateTime now)
    {
        var year = now.Year;
        if (draft.At(at + taken) is { IsNumber: true, IsWhole: true, Value: >= 2000 and <= 2200 } said)
        {
            year = (int)said.Value;
            taken++;
        }

        if (day < 1 || day > DateTime.DaysInMonth(year, month))
        {
            draft.Slip(at, taken, "is no day of the calendar");
            return (now.Date, taken);
        }

        var date = new DateTime(year, month, (int)day, 0, 0, 0, DateTimeKind.Unspecified);
        var isOther = isPast ? date > now : date < now.Date;
        return (isOther && year == now.Year ? date.AddYears(isPast ? -1 : 1) : date, taken);
    }

    // 2026-11-28.
    private static (DateTime Date, int Taken)? Iso(PhraseDraft draft, int at)
    {
        if (draft.At(at + 1) is not { IsNumber: true, Typed: < 0 } month || draft.At(at + 2) is not { IsNumber: true, Typed: < 0 } day
            || draft.Atoms[at].Value is < 2000 or > 2200 || month.Value < -12 || !month.Glued || !day.Glued
            || -day.Value > DateTime.DaysInMonth((int)draft.Atoms[at].Value, (int)-month.Value))
        {
            return null;
        }

        return (new DateTime((int)draft.Atoms[at].Value, (int)-month.Value, (int)-day.Value, 0, 0, 0, DateTimeKind.Unspecified), 3);
    }

    // 9:00, 10am, 18h is a duration and no hour.
    private static (TimeSpan Time, int Taken)? Clock(PhraseDraft draft, int at)
    {
        if (draft.At(at) is not { } atom)
        {
            return null;
        }

        var half = atom.Kind == AtomKind.Ratio && draft.At(at + 1) is { Kind: AtomKind.Word } word && word.IsWord("am", "pm") ? 1 : 0;
        if (atom.Measures(Measure.Clock) && atom.Typed is >= 1 and <= 12)
        {
            return (TimeSpan.FromHours(atom.Typed % 12 + (atom.Unit!.Name == "pm" ? 12 : 0)), 1);
        }

        if (atom.Kind == AtomKind.Ratio && atom.Parts is [>= 0 and < 24, >= 0 and < 60] && (half == 1 || HasTwoDigits(atom)))
        {
            var hours = half == 0 ? atom.Parts[0] : atom.Parts[0] % 12 + (draft.Atoms[at + 1].Lower == "pm" ? 12 : 0);
            return (new TimeSpan((int)hours, (int)atom.Parts[1], 0), 1 + half);
        }

        return null;
    }

    // 9:00 is a time of day and 2:1 is none.
    private static bool HasTwoDigits(Atom atom) => atom.Lower.Length > 3 && atom.Lower[^3] == ':';

    private static TimeSpan? Later(PhraseDraft draft, int at) =>
        draft.At(at) is { } atom && atom.Measures(Measure.Time) && atom.Value is > 0 and < 3e7 ? TimeSpan.FromSeconds(atom.Value) : null;
}
