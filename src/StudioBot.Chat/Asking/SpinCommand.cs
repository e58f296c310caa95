using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft;
using StudioBot.Craft.Pours;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Units;

namespace StudioBot.Chat.Asking;

/// <summary><c>spin 4in tile 120 rpm 20 s</c>: what spinning leaves on a tile.</summary>
internal sealed class SpinCommand : Ask
{
    private static readonly SurfaceSlot Size = new() { IsRequired = true };
    private static readonly FilmSlot Film = new(Size);
    private static readonly NumberSlot Turns = new(Measure.Turns, "rpm", "a speed", "120 rpm")
    {
        IsRequired = true,
        Unit = "rpm",
        Most = 3000,
    };
    private static readonly NumberSlot Seconds = new(Measure.Time, "seconds", "how long", "20 s")
    {
        IsRequired = true,
        Unit = "s",
        Most = 3600,
    };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "spin", Room.Asking, "What spinning leaves on a tile.",
        [Film, Size, Turns, Seconds],
        ["spin 4in tile 120 rpm 20 s", "spin 30cm round 90 rpm 15 s 2.5 mm"])
    {
        More = "The film left, and the share thrown off.",
        Also = ["spun"],
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var technique = studio.Technique(null);
        var start = said.Or(Film, technique.Laid.Usual);
        var radius = said.Of(Size).Groups.Select(group => Spin.RimRadius(group.Surface)).Max();
        var calm = Math.Floor(Spin.SpeedFor(radius, Spin.SplashesAbove).RevolutionsPerMinute);
        var slower = new Button($"At {Show.Number(calm)} rpm", Line(said, start, calm));
        return At(said, Spin.UsualViscosity).RimPull(radius) switch
        {
            Finding<double>.None none => new Reply(
                [
                    new Block.Headline("Not at that speed"),
                    new Block.Line(
                        $"At {Show.Number(said.Of(Turns))} rpm {none.Why}. {none.Instead} "
                        + $"{Show.Number(calm)} rpm and less keep it on."),
                    new Block.Caution(studio.Practice.Safety.Of(SafetySubject.Spinner).Line),
                ],
                [slower])
            {
                IsTrouble = true,
            },
            Finding<double>.Cautioned fast => Left(said, start, studio,
                $"Fast: the rim pulls {Show.Number(fast.Value)} times the weight, paint flies off. "
                + $"Calm under {Show.Number(calm)} rpm.",
                slower),
            _ => Left(said, start, studio, null, new Button("Twice as long", Line(said, start, said.Of(Turns), 2))),
        };
    }

    private static Reply Left(Phrase said, Length start, Studio studio, string? fast, Button next)
    {
        var time = TimeSpan.FromSeconds(said.Of(Seconds));
        var left = At(said, Spin.UsualViscosity).FilmAfter(start, time);
        List<Figure> rows =
        [
            new(said.Has(Film) ? "Film before" : "Film before, taken", Show.Film(start)),
            new("Left by a thin paint", Show.Film(At(said, Spin.ThinViscosity).FilmAfter(start, time))),
            new("Left by a thick one", Show.Film(At(said, Spin.ThickViscosity).FilmAfter(start, time))),
        ];
        var bound = At(said, Spin.UsualViscosity).ThinLimit(time);
        if (bound < start)
        {
            rows.Add(new Figure("Upper bound at 1 Pa·s", Show.Film(bound)));
        }

        List<Block> blocks =
        [
            new Block.Headline($"{Show.Film(left)} left, {Show.Share(Spin.ThrownOff(start, left))} thrown off"),
            new Block.Figures(rows),
            new Block.Line(
                "At 1 Pa·s, thin 0.3, thick 3: common practice. Real films end thinner; slow turns may move nothing."),
        ];
        if (fast is not null)
        {
            blocks.Add(new Block.Line(fast));
        }

        blocks.Add(new Block.Caution(studio.Practice.Safety.Of(SafetySubject.Spinner).Line));
        return new Reply(blocks, [next]);
    }

    private static Spin At(Phrase said, DynamicViscosity viscosity) =>
        new(Spin.UsualDensity, RotationalSpeed.FromRevolutionsPerMinute(said.Of(Turns)), viscosity);

    private static string Line(Phrase said, Length start, double rpm, int times = 1) =>
        $"spin {(said.Has(Film) ? Film.Say(start) + " " : "")}{SurfaceSlot.Words(said.Of(Size))} "
        + $"{Turns.Say(rpm)} {Seconds.Say(said.Of(Seconds) * times)}";
}
