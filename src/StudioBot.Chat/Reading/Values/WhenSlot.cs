using System.Globalization;

namespace StudioBot.Chat.Reading.Values;

/// <summary>A day, and an hour where one was said: <c>tuesday</c>, <c>28 Nov 10am</c>, <c>fri 18:00</c>.</summary>
/// <param name="isPast">Whether a weekday is the last one, as for a record, or the next.</param>
/// <param name="key">The key under which it is understood.</param>
/// <param name="isMinute">Whether minutes count: <c>14.20</c> is an hour too, and in a record an hour alone may be
/// yesterday's.</param>
internal sealed class WhenSlot(bool isPast, string key, bool isMinute = false) : Slot<DateTime>(
    isMinute ? "an hour" : "a day", isMinute ? "14:20" : isPast ? "tuesday" : "fri 18:00")
{
    // An hour to come is yesterday's where it is no longer gone than this: one who works by night types after midnight.
    private static readonly TimeSpan LongestGone = TimeSpan.FromHours(12);

    /// <summary>Whether minutes count.</summary>
    public bool IsMinute => isMinute;

    internal override IEnumerable<string> Lexicon =>
        CalendarWords.All.Concat(["tomorrow", "yesterday"]).Where(word => word.Length > 5);

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

        var taken = TakeTwoDays(draft, at + lead) ?? TakeDay(draft, at + lead) ?? TakeClock(draft, at + lead);
        return taken is { } some ? lead + some : 0;
    }

    internal override IEnumerable<Meaning> Means(DateTime value) => [new(key, Text(value, "yyyy-MM-dd", "'T'HH:mm"))];

    internal override string Say(DateTime value) => Text(value, "d MMM yyyy", " HH:mm");

    // Midnight stands for a day without an hour.
    private static string Text(DateTime value, string day, string hour) =>
        value.ToString(value.TimeOfDay == TimeSpan.Zero ? day : day + hour, CultureInfo.InvariantCulture);

    // 11/12 is the eleventh of December to some and November to others.
    private static int? TakeTwoDays(PhraseDraft draft, int at)
    {
        if (draft.Atoms[at] is not { Kind: AtomKind.Fraction } fraction
            || !fraction.Parts.All(part => part is >= 1 and <= 31))
        {
            return null;
        }

        draft.Slip(at, 1, "is two days: write the month's name", $"{draft.Form.Sheet.Word} … {fraction.Parts[0]} Nov");
        return 1;
    }

    private int? TakeDay(PhraseDraft draft, int at)
    {
        if (new DayWords(draft, isPast).At(at) is not { } day)
        {
            return null;
        }

        if (isPast
            && (day.Date > draft.Context.Local || (at > 0 && draft.Atoms[at - 1].IsWord("till", "until", "next"))))
        {
            draft.Slip(at, day.Taken, "is a day to come: a record is of what was");
            return day.Taken;
        }

        var behind = at + day.Taken;
        behind += draft.At(behind) is { } between && between.IsWord("at") ? 1 : 0;
        var clock = Clock(draft, behind);
        draft.Said.Put(this, day.Date + (clock?.Time ?? TimeSpan.Zero));
        return clock is { } said ? behind + said.Taken - at : day.Taken;
    }

    // An hour alone is today's, or tomorrow's where today's is over and something is still to come.
    private int? TakeClock(PhraseDraft draft, int at)
    {
        if (Clock(draft, at) is not { } clock)
        {
            return null;
        }

        var now = draft.Context.Local;
        var today = now.Date + clock.Time;
        var isYesterdays = isPast && isMinute && today > now && now - today.AddDays(-1) <= LongestGone;
        draft.Said.Put(this, isYesterdays ? today.AddDays(-1) : !isPast && today <= now ? today.AddDays(1) : today);
        return clock.Taken;
    }

    // Midnight stands for a day without an hour: where minutes count, the hour 0:00 is a tick behind it.
    private (TimeSpan Time, int Taken)? Clock(PhraseDraft draft, int at)
    {
        var clock = ClockWords.At(draft, at) ?? (isMinute ? ClockWords.Dotted(draft, at) : null);
        return clock is (var time, var taken) && isMinute && time == TimeSpan.Zero
            ? (TimeSpan.FromTicks(1), taken)
            : clock;
    }
}
