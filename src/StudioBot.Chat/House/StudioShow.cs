using StudioBot.Chat.Asking;
using StudioBot.Chat.Pings;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.House;

/// <summary><c>studio</c>: what the studio has set, and how the bot is.</summary>
internal sealed class StudioShow : Ask
{
    private static readonly ChoiceSlot Topic = new("", "a topic", new Dictionary<string, string>
    {
        ["health"] = "health",
        ["status"] = "health",
    });

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "studio", Room.House, "What the studio has set, and how the bot is.",
        [RowPages.Page, Topic],
        ["studio", "health"])
    {
        More = "Health: pieces and reminders that wait, each room as last read.",
        AlsoSaying = ["health", "status"],
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio) =>
        said.Has(Topic) ? Health(said, turn, studio) : Settings(said, studio);

    private static Reply Settings(Phrase said, Studio studio)
    {
        if (studio.View.Studio.Settings() is not { } settings)
        {
            return new Reply(new Block.Headline("No studio is founded here yet"));
        }

        var others = studio.View.Studio.AllSet()
            .Where(one => one.Key
                    is not (QuietSetting.Name or StudioGroup.Name or Setup.Name or Wall.Name or Wall.Standing)
                && !AskedForPing.IsRequest(one.Key) && !Ordered.IsOrder(one.Key));
        var quiet = QuietSetting.Read(studio.View.Studio.Setting(QuietSetting.Name));
        List<Figure> rows =
        [
            new("Currency", settings.Currency),
            new("Units", UnitsWord.Of(settings.Units)),
            new("Scoop", Show.Volume(settings.Scoop)),
            new("Quiet", QuietSetting.Said(quiet ?? QuietSetting.Usual)),
            .. others.Select(one => new Figure(
                Sentences.Capital(one.Key.Replace('_', ' ')), Labels.Short(one.Value))),
        ];
        return RowPages.Of(
            settings.Name,
            [new Block.Line($"Clock of {settings.Zone}.")],
            [new RowGroup("", rows)],
            [new Block.Line((quiet is null ? "Quiet hours as usual, none are set." : "All of it is set here.")
                + Sentences.Invented(studio))],
            said,
            [new Button("How it is", "health"), new Button("Members", "members")]);
    }

    private static Reply Health(Phrase said, Turn turn, Studio studio)
    {
        var stages = studio.View.Pieces.All().CountBy(piece => piece.Stage).ToDictionary();
        var (drying, ready, curing) = (
            stages.GetValueOrDefault(Stage.Drying),
            stages.GetValueOrDefault(Stage.Ready),
            stages.GetValueOrDefault(Stage.Coated));
        var readings = studio.View.Rooms.Current().ToDictionary(reading => reading.Room);
        List<Figure> rooms = [.. studio.View.Rooms.All().Select(room => new Figure(
            room.Name,
            readings.GetValueOrDefault(room.Name) is { } read
                ? $"{Show.Degrees(read.Temperature)} {Show.Share(read.Humidity.Share)}, "
                    + WallTime.Age(read.At, turn, studio)
                : "never read"))];
        var waiting = studio.View.Reminders.Waiting();
        return RowPages.Of(
            $"{Count(drying + ready + curing, "piece")} and {Count(waiting, "reminder")} waiting",
            [],
            [
                new RowGroup("Pieces",
                [
                    new Figure("drying", Show.Number(drying, 0)),
                    new Figure("dry, not coated", Show.Number(ready, 0)),
                    new Figure("coated, curing", Show.Number(curing, 0)),
                ]),
                new RowGroup("Rooms as last read, how long ago", rooms),
            ],
            [new Block.Line(Next(waiting, turn, studio) + Sentences.Invented(studio))],
            said,
            [new Button("What is set", "studio"), new Button("The air now", "air")]);
    }

    private static string Next(int waiting, Turn turn, Studio studio)
    {
        if (waiting == 0 || studio.View.Reminders.NextDue() is not { } next)
        {
            return "No reminder waits.";
        }

        var at = $"{WallTime.Day(next, turn, studio)} {WallTime.Clock(next, studio)}";
        return WallTime.Of(next, studio) <= turn.Local
            ? $"The next reminder is due since {at}."
            : $"The next reminder: {at}.";
    }

    private static string Count(int count, string noun) => count == 1 ? $"1 {noun}" : $"{count} {noun}s";
}
