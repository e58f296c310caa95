using StudioBot.Chat.Pings;
using StudioBot.Craft.Reminders;

namespace StudioBot.Chat.Reading.Values;

/// <summary>When the week is told: <c>week sunday 18:00</c>, <c>week fri</c>.</summary>
internal sealed class WeekDaySlot() : Slot<string>("a day and an hour", "week sunday 18:00")
{
    internal override int Take(PhraseDraft draft, int at)
    {
        if (!draft.Atoms[at].IsWord("week") || draft.Said.Has(this))
        {
            return 0;
        }

        var (day, time, taken) = ((DayOfWeek?)null, WeekSetting.Usual.At, 1);
        while (draft.At(at + taken) is { } atom)
        {
            if (day is null && CalendarWords.Day(atom.Lower) is { } named)
            {
                (day, taken) = (named, taken + 1);
            }
            else if (ClockWords.At(draft, at + taken) is { } clock)
            {
                (time, taken) = (TimeOnly.FromTimeSpan(clock.Time), taken + clock.Taken);
            }
            else if (atom.IsWord("day", "on", "at"))
            {
                taken++;
            }
            else
            {
                break;
            }
        }

        if (day is null)
        {
            draft.Slip(at, 1, "needs a day", $"{draft.Form.Sheet.Word} week sunday 18:00");
        }
        else
        {
            draft.Said.Put(this, WeekSetting.Kept(new CivilRule(time, day)));
        }

        return taken;
    }

    internal override IEnumerable<Meaning> Means(string value) => [new("week", value)];

    internal override string Say(string value) => "week " + value;
}
