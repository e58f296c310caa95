using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Replies;
using StudioBot.Records.Workshops;

namespace StudioBot.Chat.Sharing;

/// <summary><c>reserve sat 10:00 8 people 2 tiles 10cm 5 colours</c>: what a workshop takes is set aside.</summary>
internal sealed class ReserveCommand : Act
{
    private const string Word = "reserve";
    private const int MostRows = 5;
    private const int MostShort = 3;

    // What a book can hold: less is nothing.
    private const double Least = 0.001;

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        Word, Room.Sharing, "What a workshop takes is set aside.",
        WorkshopPlan.Slots,
        ["reserve sat 10:00 8 people 2 tiles 10cm 5 colours"])
    {
        More = "Level, low-stock pings and shopping count with it until it begins.",
    };

    /// <summary>The message that reserves what a workshop was asked to take.</summary>
    public static string LineOf(Phrase workshop) => $"{Word} {Rest(workshop)}";

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said) => WorkshopPlan.Check(said, Word);

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        if (Untimely(said, writing) is { } untimely)
        {
            return untimely;
        }

        var at = StartOf(said, writing);
        var plan = WorkshopPlan.Of(said, writing.Studio);
        IReadOnlyList<WorkshopPart> takes = [.. plan.Needs.All
            .Where(need => need.Units >= Least)
            .Select(need => new WorkshopPart(need.Material, need.Amount))];
        if (takes.Count == 0)
        {
            return Trouble("Nothing that it takes is among the materials.", "What there is:", "stock", writing);
        }

        var same = writing.Session.Workshops.After(writing.Now).FirstOrDefault(one => one.StartsAt == at);
        if (same is not null && !writing.Turn.IsAgreed)
        {
            return new Reply(
                [
                    new Block.Headline(
                        $"{Reservation.Moment(same, writing.Studio)} is reserved already, for {People(same.People)}. "
                        + "Nothing recorded."),
                    new Block.Line("Is this another one?"),
                ],
                [
                    new Button("Reserve it too", said.Line) { Agrees = true },
                    new Button("Workshops", "workshops"),
                ])
            {
                IsTrouble = true,
            };
        }

        return Reserved(
            writing.Session.Workshops.Add(at, said.Of(WorkshopPlan.People), Rest(said), takes, writing.Act),
            takes,
            plan.Needs.Unknown,
            writing);
    }

    /// <summary>8 people.</summary>
    public static string People(int people) => people == 1 ? "1 person" : $"{people} people";

    private static Reply Reserved(
        Workshop workshop, IReadOnlyList<WorkshopPart> takes, IReadOnlyList<string> unknown, Writing writing)
    {
        var missing = Short(takes, writing);
        var shown = missing.Count > 0 ? MostRows - 1 : MostRows;
        List<Block> blocks =
        [
            new Block.Headline(
                $"Reserved for {Reservation.Moment(workshop, writing.Studio)}, {People(workshop.People)}."),
            FitRows.Of([.. takes.Take(shown)
                .Select(part => new Figure(part.Material.Name, Show.Amount(part.Amount)))]),
        ];
        if (takes.Count > shown)
        {
            blocks.Add(new Block.Line($"And {takes.Count - shown} more."));
        }

        if (missing.Count > 0)
        {
            var more = missing.Count > MostShort ? $" and {missing.Count - MostShort} more" : "";
            blocks.Add(new Block.Line($"Short then: {string.Join(", ", missing.Take(MostShort))}{more}."));
        }

        if (unknown.Count > 0)
        {
            blocks.Add(new Block.Line($"Not among the materials: {string.Join(", ", unknown.Take(MostShort))}."));
        }

        return new Reply(
            blocks,
            [
                new Button("Workshops", "workshops"),
                .. missing.Count > 0 ? (Button[])[new Button("What to buy", "buy")] : [],
            ]);
    }

    // All that is reserved by now is held against what is there.
    private static List<string> Short(IReadOnlyList<WorkshopPart> takes, Writing writing)
    {
        var (levels, all) = (new Levels(writing), Reservation.All(writing.Studio, writing.Now));
        return
        [
            .. takes.Select(part => new Need(
                    part.Material,
                    all[part.Material.Id].Sum(one => one.Units) - Need.UnitsOf(levels.Of(part.Material))))
                .Where(need => need.Units >= Least)
                .Select(need => $"{need.Material.Name} {Show.Amount(need.Amount)}"),
        ];
    }

    // A reservation needs a day and an hour to come.
    private static Reply? Untimely(Phrase said, Writing writing)
    {
        if (!said.Has(WorkshopPlan.When))
        {
            return Trouble(
                "When does it start?", "Say the day and the hour:", $"{Word} sat 10:00 {Rest(said)}", writing);
        }

        var when = WorkshopPlan.When.Say(said) ?? "";
        if (said.Of(WorkshopPlan.When).TimeOfDay == TimeSpan.Zero)
        {
            return Trouble(
                $"At what hour of {when}?",
                "Say it behind the day:",
                said.Line.Replace(when, $"{when} 10:00", StringComparison.Ordinal),
                writing);
        }

        return StartOf(said, writing) <= writing.Now
            ? Trouble($"{when} is over.", "Say when it starts:", "reserve sat 10:00 8 people 2 tiles 10cm", writing)
            : null;
    }

    private static DateTimeOffset StartOf(Phrase said, Writing writing)
    {
        var when = said.Of(WorkshopPlan.When);
        return writing.Turn.Zone.InstantOf(DateOnly.FromDateTime(when), TimeOnly.FromDateTime(when));
    }

    private static string Rest(Phrase said) => said.Line[(said.Form.Sheet.Word.Length + 1)..];

    private static Reply Trouble(string what, string why, string line, Writing writing) => new(
        new Block.Headline($"{what} Nothing recorded."),
        new Block.Line(why),
        new Block.Sample(Typed.In(writing.Turn, line)))
    {
        IsTrouble = true,
    };
}
