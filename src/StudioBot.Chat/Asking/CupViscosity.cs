using StudioBot.Chat.Reading;
using StudioBot.Chat.Replies;
using StudioBot.Craft;
using StudioBot.Craft.Flow;
using StudioBot.Craft.Units;

namespace StudioBot.Chat.Asking;

/// <summary>The viscosity behind a cup's seconds.</summary>
internal static class CupViscosity
{
    /// <summary>It, how far the cup can be trusted, and at what temperature.</summary>
    public static Reply Of(FlowRun run, Phrase said, Studio studio)
    {
        var (cup, time) = (run.Cup!, run.Before!.Value);
        var (viscosity, caution) = Read(cup, time);
        List<Figure> rows =
        [
            new("Viscosity", Show.Number(viscosity.SquareMillimetresPerSecond) + " mm²/s"),
            new(
                $"{cup.Title} tells",
                $"{Show.Number(cup.Times.From.TotalSeconds, 0)} to {Show.Number(cup.Times.To.TotalSeconds, 0)} s"),
        ];
        var medium = studio.View.Materials.All().FirstOrDefault(material => material.Name == PourNeeds.Medium);
        if (medium?.Density is { } density)
        {
            rows.Insert(
                1,
                new Figure(
                    $"as medium, {Show.Number(density.GramsPerMillilitre, 2)} g/ml",
                    Show.Number((viscosity * density).MillipascalSeconds) + " mPa·s"));
        }

        List<Block> blocks =
        [
            new Block.Headline($"{cup.Title}, {Show.Number(time.TotalSeconds, 2)} s: "
                + $"{Show.Number(viscosity.SquareMillimetresPerSecond, 0)} mm²/s"),
            new Block.Figures(rows),
            new Block.Line(Warmth(run.At, studio)),
            new Block.Line("Paint thins as it is sheared: good for “same as last time”, in the same cup."),
        ];
        if (caution is not null)
        {
            blocks.Add(new Block.Caution(Sentences.Of(caution)));
        }

        return new Reply(blocks, [new Button("In other cups", $"{said.Line} elsewhere")]);
    }

    /// <summary>How long it would drain in every other cup that reads it.</summary>
    public static Reply Elsewhere(FlowCup cup, TimeSpan time)
    {
        var (viscosity, _) = Read(cup, time);
        List<Figure> rows = [.. CupCurves.All
            .Where(other => other != cup)
            .Select(other => (Cup: other, Time: other.Drains(viscosity)))
            .Where(other => other.Time >= other.Cup.Times.From && other.Time <= other.Cup.Times.To)
            .Select(other => new Figure(other.Cup.Title, Show.Number(other.Time.TotalSeconds, 0) + " s"))];
        return new Reply(
        [
            new Block.Headline($"{cup.Title}, {Show.Number(time.TotalSeconds, 2)} s, elsewhere about"),
            .. rows.Count > 0
                ? (IEnumerable<Block>)[new Block.Figures(rows)]
                : [new Block.Line("No other cup reads it within its range.")],
            new Block.Line("By the cups' curves, for oil. With paint, cups of two makes disagree."),
        ]);
    }

    private static (KinematicViscosity Viscosity, string? Caution) Read(FlowCup cup, TimeSpan time) =>
        CupCurves.Viscosity(cup, time) switch
        {
            Finding<KinematicViscosity>.Found found => (found.Value, null),
            Finding<KinematicViscosity>.Cautioned cautioned => (cautioned.Value, cautioned.Caution),
            var none => throw new InvalidOperationException($"The check lets no such seconds pass: {none}."),
        };

    private static string Warmth(Temperature? said, Studio studio) => (said, studio.View.Rooms.Current()) switch
    {
        ({ } at, _) => $"At {Show.Degrees(at)}; compare only within 2 °C.",
        (null, [var room, ..]) => $"Taken: {Show.Degrees(room.Temperature)}, the {room.Room}'s last reading; "
            + $"compare only within 2 °C.{Sentences.Invented(studio)}",
        _ => "Note how warm it is: compare only within 2 °C.",
    };
}
