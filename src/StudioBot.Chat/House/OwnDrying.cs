using StudioBot.Chat.Asking;
using StudioBot.Chat.Drying;
using StudioBot.Chat.Learning;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Drying;

namespace StudioBot.Chat.House;

/// <summary><c>studio drying</c>: how this studio's pieces dry beside common practice.</summary>
internal sealed class OwnDrying : Ask
{
    private const int MostRooms = 3;
    private static readonly ChoiceSlot Topic = new("", "drying", ["drying"]) { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "studio", Room.House, "How your own pieces dry beside common practice.",
        [Topic],
        ["studio drying"])
    {
        More = "The time, thick films, each room, and since when it changed.",
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var reckoning = new PieceReckoning(studio.View, studio.Practice, turn.Now);
        var taught = reckoning.Taught;
        var usual = ScaledTime.ReadyForResin;
        var usually = $"Common practice: {Show.Number(usual.Time.TotalDays)} days for "
            + $"{Show.Number(usual.Film.Millimetres)} mm at 23 °C, 50 %.";
        if (taught.Pieces == 0)
        {
            return new Reply(
                new Block.Headline("No piece has dried here yet"),
                new Block.Line(usually + " Say when one is dry, or not yet: the days become your own."),
                new Block.Sample("notyet 17"));
        }

        List<Block> blocks =
        [
            new Block.Headline(Times(taught.Factor, "Pieces take", "the usual time")),
            new Block.Line($"{Count(taught.Pieces)} that dried. {usually}"),
            new Block.Line($"Twice the film takes {Times(taught.Exponent)} times as long, usually "
                + $"{Times(usual.Exponent)}."),
            .. taught.Rooms.Count < 2 ? [] : taught.Rooms.Take(MostRooms).Select(room => new Block.Line(
                $"{Sentences.Capital(room.Room)}, {Count(room.Pieces)}: "
                + $"{Show.Number(room.Factor, 2)} of what its air says.")),
        ];
        if (DryingNews.Of(reckoning, studio.Zone) is { } news)
        {
            blocks.Add(new Block.Line(news));
        }

        if (taught.LeftOut > 0)
        {
            blocks.Add(new Block.Line($"{Count(taught.LeftOut)} left out, taken for a slip of film or day."));
        }

        blocks.Add(new Block.Line("Drawn towards common practice while pieces are few." + Sentences.Invented(studio)));
        return new Reply(
            blocks, [new Button("How well it foretold", "studio accuracy"), new Button("Pieces", "pieces")]);
    }

    private static string Times(double factor, string what, string of) =>
        $"{what} {Show.Number(factor, 2)} of {of}";

    private static string Times(double power) => Show.Number(Math.Pow(2, power));

    private static string Count(int count) => count == 1 ? "1 piece" : $"{count} pieces";
}
