using System.Globalization;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;

namespace StudioBot.Chat.Sharing;

/// <summary><c>week</c>: the week in short.</summary>
internal sealed class WeekCommand : Ask
{
    private const int Days = 7;

    private static readonly NumberSlot Week = new(Measure.Turns, "week", "a week", "47")
    {
        TakesBare = true,
        Least = 1,
        Most = 53,
    };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "week", Room.Sharing, "The week in short.",
        [Week],
        ["week", "week 47"])
    {
        More = "In five lines: used, bought, what is low and to buy, pieces, who used what; with a picture of "
            + "what was used against what is left. Stewards set when it comes by itself: studio week fri "
            + "17:00.",
        Also = ["wk", "summary"],
    };

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said) => said.Has(Week) && said.Of(Week) != Math.Floor(said.Of(Week))
        ? new Misread(Figures.Of(said.Of(Week)), "is no week: they have whole numbers", Sheet.Examples[1])
        : null;

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var today = DateOnly.FromDateTime(turn.Local);
        var monday = said.Has(Week) ? MondayOf((int)said.Of(Week), today) : MondayOf(today);
        var zone = studio.Zone;
        var span = new WeekSpan(
            zone.InstantOf(monday, TimeOnly.MinValue), zone.InstantOf(monday.AddDays(Days), TimeOnly.MinValue));
        var now = zone.InstantOf(today, TimeOnly.FromDateTime(turn.Local));
        var summary = new WeekSummary(span, studio, now, zone, withMoney: turn.Chat == ChatKind.Private);
        var title = Title(monday, today);
        var number = NumberOf(monday);
        return new Reply(
            [new Block.Headline(title), .. summary.Within(LineBudget.Lines - 1)],
            [
                new Button("The week before", string.Create(
                    CultureInfo.InvariantCulture, $"week {NumberOf(monday.AddDays(-Days))}")),
                .. number == NumberOf(today) ? Array.Empty<Button>() : [new Button("This week", "week")],
                new Button("Stock", "stock"),
            ])
        {
            File = summary.Picture(title),
        };
    }

    // Week 48, 23 Nov to 29 Nov so far.
    private static string Title(DateOnly monday, DateOnly today)
    {
        var sunday = monday.AddDays(Days - 1);
        var year = sunday.Year == today.Year ? "" : " " + sunday.Year.ToString(CultureInfo.InvariantCulture);
        var so = sunday >= today ? " so far" : "";
        return $"Week {NumberOf(monday)}, {Show.Day(monday)} to {Show.Day(sunday)}{year}{so}";
    }

    private static int NumberOf(DateOnly day) => ISOWeek.GetWeekOfYear(day.ToDateTime(TimeOnly.MinValue));

    private static DateOnly MondayOf(DateOnly day) => day.AddDays(-(((int)day.DayOfWeek + Days - 1) % Days));

    // The last week of this number that has begun; not every year has a 53rd.
    private static DateOnly MondayOf(int week, DateOnly today)
    {
        var monday = MondayOf(today);
        while (NumberOf(monday) != week)
        {
            monday = monday.AddDays(-Days);
        }

        return monday;
    }
}
