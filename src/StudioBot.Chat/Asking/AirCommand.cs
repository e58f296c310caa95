using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft;
using StudioBot.Craft.Air;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Units;

namespace StudioBot.Chat.Asking;

/// <summary><c>air 19C 72%</c>: whether this air suits resin, and how fast it dries.</summary>
internal sealed class AirCommand : Ask
{
    private static readonly AirSlot Air = new() { TakesBare = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "air", Room.Asking, "Whether this air suits resin, and how fast it dries.",
        [Air],
        ["air 19C 72%", "air 19C 72% surface 15C", "air"])
    {
        More = "Dew point, resin yes or no and the cheapest way to yes.",
        Also = ["dew", "dewpoint"],
        Cues =
        [
            new("{temperature} {humidity}"),
            new("resin/dry/dew {temperature} {humidity}"),
        ],
    };

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said)
    {
        if (!said.Has(Air))
        {
            return null;
        }

        return said.Of(Air) switch
        {
            { Air: not null, Humidity: null } => new Misread("", "the humidity is missing", Sheet.Examples[0]),
            { Air: null, Humidity: not null } => new Misread("", "the temperature is missing", Sheet.Examples[0]),
            _ => null,
        };
    }

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var words = said.Has(Air) ? said.Of(Air) : new AirWords(null, null, null, null);
        var taken = AirTaken.Of(words, turn, studio);
        return taken.Room switch
        {
            Finding<RoomAir>.Found found =>
                Verdict(found.Value, ResinAir.Judge(found.Value, words.Surface, words.Night), taken, words, studio),
            Finding<RoomAir>.None none =>
                new Reply(new Block.Headline($"No figure: {none.Why}."), new Block.Line($"Instead: {none.Instead}."))
                {
                    IsTrouble = true,
                },
            _ => throw new InvalidOperationException("Air is read or it is not."),
        };
    }

    private static Reply Verdict(RoomAir room, ResinAir resin, AirTaken taken, AirWords words, Studio studio)
    {
        var flow = taken.Flow(studio.Practice.UsualResin);
        var isTooCold = flow is Finding<WorkingTime>.None;
        List<Block> blocks =
        [
            new Block.Headline($"Resin: {(isTooCold ? "no" : AirWording.Answer(resin.Answer))}"),
            new Block.Figures(Rows(room, resin)),
        ];
        if (!taken.IsSaid)
        {
            blocks.Add(
                new Block.Line($"{taken.Words}: {taken.Grounds}.{(studio.IsSample ? " (Invented studio.)" : "")}"));
        }

        blocks.AddRange(Whys(resin, flow, room.Temperature < studio.Practice.UsualResin.TimesAt.Value));
        if (resin.Now is { Assumed: true } || resin.AtNight is { Assumed: true })
        {
            blocks.Add(new Block.Line(Assumed(resin)));
        }

        if (DryingSpeed.Of(room) is Finding<double>.None still)
        {
            blocks.Add(new Block.Caution(Sentence(still.Why)));
        }
        else if (DryingSpeed.Of(room) is Finding<double>.Cautioned slow)
        {
            blocks.Add(new Block.Caution(Sentence(slow.Caution)));
        }

        return new Reply(blocks, Buttons(room, isTooCold ? null : resin.Cheapest, words));
    }

    // The gravest reason alone; the way leads past all of them. Where it is too cold to cure, dry air is no help.
    private static IEnumerable<Block> Whys(ResinAir resin, Finding<WorkingTime> flow, bool isCool)
    {
        if (flow is Finding<WorkingTime>.None cold)
        {
            yield return new Block.Line(Sentence($"{cold.Why}: {cold.Instead}"));
            yield break;
        }

        if (flow is Finding<WorkingTime>.Cautioned cool && isCool)
        {
            yield return new Block.Caution(Sentence(cool.Caution));
        }

        if (resin.Reasons.Count > 0)
        {
            yield return new Block.Line(Sentence(AirWording.Reason(resin.Reasons[0])));
        }

        if (resin.Cheapest is { } cheapest)
        {
            yield return new Block.Line("Cheapest: " + AirWording.Way(cheapest) + ".");
        }
    }

    private static List<Figure> Rows(RoomAir room, ResinAir resin)
    {
        List<Figure> rows = [new("Drying (23 °C 50 % = 1)", Show.Number(DryingSpeed.Rate(room.Deficit), 2))];
        if (resin is { Now: { } now, AtNight: { } night })
        {
            rows.Insert(0, new Figure("Dew point", Show.Degrees(now.DewPoint)));
            rows.Insert(1, new Figure($"Margin, piece {Show.Degrees(now.Surface)}", Show.Number(now.Degrees) + " °C"));
            rows.Insert(
                2, new Figure($"Margin, night {Show.Degrees(night.Surface)}", Show.Number(night.Degrees) + " °C"));
        }

        return rows;
    }

    private static string Assumed(ResinAir resin)
    {
        var piece = resin.Now is { Assumed: true } ? $"piece {Show.Number(ResinAir.AssumedSurfaceDrop)} °C" : "";
        var night = resin.AtNight is { Assumed: true } ? $"night {Show.Number(ResinAir.AssumedNightDrop)} °C" : "";
        var parts = new[] { piece, night }.Where(part => part.Length > 0);
        return $"Taken: {string.Join(", ", parts)} under the air. Sheet first.";
    }

    private static List<Button> Buttons(RoomAir room, WayToYes? way, AirWords words)
    {
        List<Button> buttons = [];
        if (way is not null)
        {
            buttons.Add(new Button("If you do that", "air " + Air.Say(After(way, room, words))));
        }

        if (words.Air is not null)
        {
            buttons.Add(new Button("The room as read", "air"));
        }

        return buttons;
    }

    // What would be said of the air once the way is gone.
    private static AirWords After(WayToYes way, RoomAir room, AirWords words) => way switch
    {
        WayToYes.WarmPanel panel => new AirWords(room.Temperature, room.Humidity, panel.To, words.Night),
        WayToYes.HoldNight night => new AirWords(room.Temperature, room.Humidity, words.Surface, night.Above),
        WayToYes.WarmRoom warm => new AirWords(
            warm.To, RelativeHumidity.FromPercent(Math.Floor(room.At(warm.To).Humidity.Percent)), null, warm.To),
        WayToYes.DryAir dry => new AirWords(room.Temperature, dry.To, words.Surface, words.Night),
        _ => throw new ArgumentOutOfRangeException(nameof(way), way, "A way without an end."),
    };

    private static string Sentence(string words) => char.ToUpperInvariant(words[0]) + words[1..] + ".";
}
