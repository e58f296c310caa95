using System.Globalization;
using StudioBot.Chat.Pings;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Reminders;

namespace StudioBot.Chat.House;

/// <summary>The four questions a new studio's steward is asked, one after the other. Each has an answer until it is
/// given, so that nothing waits for them.</summary>
internal static class Setup
{
    /// <summary>Under which name it is kept how far they came.</summary>
    public const string Name = "setup";

    /// <summary>Which clock the studio goes by.</summary>
    public const string Zone = "zone";

    /// <summary>What an ounce or a cup is.</summary>
    public const string Units = "units";

    /// <summary>When the bot keeps still.</summary>
    public const string Quiet = "quiet";

    private const string Stock = "stock";
    private const string Done = "done";

    private static readonly string[] Questions = [Zone, Units, Quiet, Stock];

    private const int MostCities = 4;

    private static readonly string[] Cities =
        ["Europe/London", "Europe/Berlin", "America/New_York", "America/Chicago", "America/Los_Angeles"];

    /// <summary>Asks the first one.</summary>
    public static Reply Begin(Writing writing) => Ask(Zone, writing);

    /// <summary>Asks the one they came to, or the first.</summary>
    public static Reply Resume(Writing writing) => Ask(
        writing.Session.Studio.Setting(Name) is { } reached && reached != Done ? reached : Zone, writing);

    /// <summary>Asks the next one, or says that all are answered.</summary>
    public static Reply Next(Writing writing)
    {
        var at = Array.IndexOf(Questions, writing.Session.Studio.Setting(Name) ?? Zone);
        if (at >= 0 && at + 1 < Questions.Length)
        {
            return Ask(Questions[at + 1], writing);
        }

        writing.Session.Studio.Set(Name, Done, writing.Act);
        return new Reply(
            [
                new Block.Headline("Set up"),
                new Block.Line("What is set: studio. Others come in by members invite."),
            ],
            [new Button("What is set", "studio"), new Button("Invite", "members invite"), new Button("Help", "help")]);
    }

    /// <summary>A setting was told: where this was the question, the next one goes with what is said of it.</summary>
    /// <param name="question">What was told.</param>
    /// <param name="said">What is said of it.</param>
    /// <param name="writing">What is being written.</param>
    public static Reply After(string question, Reply said, Writing writing)
    {
        if (writing.Session.Studio.Setting(Name) != question)
        {
            return said;
        }

        var next = Next(writing);
        return said with { Blocks = [.. said.Blocks, .. Below(next)], Buttons = [.. said.Buttons, .. next.Buttons] };
    }

    /// <summary>A reply as it stands below another headline.</summary>
    public static IEnumerable<Block> Below(Reply reply) => reply.Blocks.Select(block =>
        block is Block.Headline(var text) ? new Block.Line(text) : block);

    private static Reply Ask(string question, Writing writing)
    {
        if (writing.Session.Studio.Setting(Name) != question)
        {
            writing.Session.Studio.Set(Name, question, writing.Act);
        }

        var settings = writing.Session.Studio.Settings()!;
        var (asked, hint, sample, buttons) = question switch
        {
            Zone => (
                $"Is it {Clock(settings.Zone, writing.Now)} where the studio is?",
                $"The clock of {settings.Zone} is taken until you name another city.",
                "studio zone Europe/Vienna",
                Zones(settings.Zone, writing.Now)),
            Units => (
                "Whose ounces and cups do you use?",
                $"Taken until you say: {UnitsWord.Of(settings.Units)}. Millilitres and grams are always understood.",
                "studio units us",
                [
                    new Button("Metric", "studio units metric"),
                    new Button("US", "studio units us"),
                    new Button("Imperial", "studio units imperial"),
                ]),
            Quiet => (
                "When shall I keep still?",
                $"Taken until you say: {QuietSetting.Said(Hours(writing))}. What can't wait still comes.",
                "studio quiet 22-8",
                [
                    new Button("As it is", "setup next"),
                    new Button("21 to 7", "studio quiet 21-7"),
                    new Button("23 to 9", "studio quiet 23-9"),
                ]),
            _ => (
                "What stands on the shelf?",
                "Press what you have, or type it, as often as you like; a count later puts it right.",
                "count white 2.5 l",
                (IReadOnlyList<Button>)
                [
                    new Button("1 litre of white", "count white 1 l"),
                    new Button("1 litre of medium", "count medium 1 l"),
                    new Button("1 kg of resin A", "count resin A 1 kg"),
                    new Button("Go on", "setup next"),
                ]),
        };
        var number = Array.IndexOf(Questions, question) + 1;
        return new Reply(
            [
                new Block.Headline($"{number} of {Questions.Length}: {asked}"),
                new Block.Line(hint),
                new Block.Sample(sample),
            ],
            buttons);
    }

    // The zone that is taken, and of the others those whose clock differs.
    private static List<Button> Zones(string taken, DateTimeOffset now) =>
    [
        new Button("That is right", "setup next"),
        .. Cities.Where(city => Clock(city, now) != Clock(taken, now)).Take(MostCities).Select(city => new Button(
            $"{Clock(city, now)} {city[(city.IndexOf('/', StringComparison.Ordinal) + 1)..].Replace('_', ' ')}",
            $"studio zone {city}")),
    ];

    private static (TimeOnly From, TimeOnly Until) Hours(Writing writing) =>
        QuietSetting.Read(writing.Session.Studio.Setting(QuietSetting.Name)) ?? QuietSetting.Usual;

    private static string Clock(string zone, DateTimeOffset now) =>
        new StudioZone(TimeZoneInfo.FindSystemTimeZoneById(zone)).LocalOf(now)
            .ToString("HH:mm", CultureInfo.InvariantCulture);
}
