using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;

namespace StudioBot.Chat.Asking;

/// <summary><c>help</c>: what you can send.</summary>
internal sealed class HelpCommand : Ask
{
    private const int OnAPage = 5;
    private const int MostExamples = 4;

    private static readonly HelpTopicSlot Topic = new();
    private static readonly ChoiceSlot InRoom = new("", "a room", new Dictionary<string, string>
    {
        ["asking"] = "asking",
        ["recording"] = "recording",
        ["sharing"] = "sharing",
        ["house"] = "house",
    });

    private static readonly PageSlot Page = new();

    // Found at the first question for help: this command is one of those it holds.
    private readonly Lazy<Catalogue> _catalogue = new(Catalogue.Find);

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "help", Room.Asking, "What you can send.",
        [InRoom, Page, Topic],
        ["help", "help resin"])
    {
        Also = ["start", "commands", "menu", "hello", "hi", "hey"],
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var answered = Answered(turn);
        if (said.Has(Topic))
        {
            return Of(said.Of(Topic), answered, turn);
        }

        return said.Has(InRoom)
            ? Listed(Rooms.First(room => Word(room) == said.Of(InRoom)), said.Or(Page, 1), answered)
            : Today(answered, turn, studio);
    }

    private static IReadOnlyList<Room> Rooms => Enum.GetValues<Room>();

    // What is answered to this person in this chat: of one word, the form that records stands before the one that asks.
    private List<Command> Answered(Turn turn)
    {
        var menu = _catalogue.Value.Menu(turn.Chat, turn.Who.IsSteward).Select(row => row.Word).ToHashSet();
        return [.. _catalogue.Value.Forms.Where(form => menu.Contains(form.Sheet.Word))];
    }

    private static Reply Today(List<Command> answered, Turn turn, Studio studio)
    {
        var messages = HelpToday.Messages(answered, turn, studio);
        var isGroup = turn.Chat == ChatKind.Group;
        List<Block> blocks =
            [new Block.Headline(isGroup ? "Send one of these, slash and all:" : "Send a message like one of these:")];
        foreach (var (says, message) in messages)
        {
            blocks.Add(new Block.Line(says));
            blocks.Add(new Block.Sample(Typed.In(turn, message)));
        }

        return new Reply(blocks, Roomed(answered));
    }

    private static Reply Listed(Room room, int page, List<Command> answered)
    {
        var all = answered.Where(form => form.Sheet.Room == room && form is not HelpCommand)
            .DistinctBy(form => form.Sheet.Word).ToList();
        var pages = Math.Max(1, (all.Count + OnAPage - 1) / OnAPage);
        var at = Math.Min(page, pages);
        var shown = all.Skip((at - 1) * OnAPage).Take(OnAPage).ToList();
        var where = pages > 1 ? $", page {at} of {pages}" : "";
        List<Block> blocks =
            [new Block.Headline(shown.Count > 0 ? Label(room) + where : $"{Label(room)}: nothing for you here")];
        blocks.AddRange(shown.Select(form => new Block.Line($"{form.Sheet.Word}: {Lower(form.Sheet.Says)}")));
        List<Button> buttons =
        [
            .. shown.Select(form => new Button(form.Sheet.Word, $"help {form.Sheet.Word}")),
            at < pages
                ? new Button("More", $"help {Word(room)} page {at + 1}")
                : new Button("Back to the start", "help"),
        ];
        return new Reply(blocks, buttons);
    }

    private Reply Of(string topic, List<Command> answered, Turn turn)
    {
        var words = _catalogue.Value.Of(topic).Select(one => one.Sheet.Word).ToHashSet();
        var found = answered.Where(one => words.Contains(one.Sheet.Word)).ToList();
        var plain = Catalogue.Plain(found);
        List<Command> forms = plain is null ? found : [plain, .. found.Where(one => one != plain)];
        if (forms.Count == 0)
        {
            return new Reply(
                [
                    new Block.Headline($"{Sentences.Capital(topic)} is not answered here"),
                    new Block.Line("What is answered, by room:"),
                    .. Roomed(answered).Select(button => new Block.Sample(Typed.In(turn, button.Line))),
                ],
                Roomed(answered))
            {
                IsTrouble = true,
            };
        }

        var sheet = forms[0].Sheet;
        List<string> examples =
            [.. forms.SelectMany(form => form.Sheet.Examples.Take(2)).Distinct().Take(MostExamples)];
        List<Block> blocks =
        [
            new Block.Headline($"{Sentences.Capital(sheet.Word)}: {Lower(sheet.Says)}"),
            new Block.Line("Type it like this:"),
        ];
        blocks.AddRange(examples.Select(example => new Block.Sample(Typed.In(turn, example))));
        if (Takes(sheet) is { Count: > 0 } takes)
        {
            blocks.Add(new Block.Line($"It takes {Sentences.And(takes)}, in any order."));
        }

        if (sheet.Also
            .Concat(sheet.AlsoSaying)
            .Where(word => word != sheet.Word)
            .Take(5)
            .ToList() is { Count: > 0 } others)
        {
            blocks.Add(new Block.Line($"Other words for it: {string.Join(", ", others)}."));
        }

        return WithMore(sheet, new Reply(blocks,
        [
            // What records is typed, never tapped in a page of help.
            .. forms.Where(form => form is Ask).SelectMany(form => form.Sheet.Examples).Take(MostExamples)
                .Select(example => new Button(Short(example), example)),
            new Button(Label(sheet.Room), $"help {Word(sheet.Room)}"),
        ]));
    }

    // What a phone has no room for stands in the page of messages all the same.
    private static Reply WithMore(CommandSheet sheet, Reply reply)
    {
        if (sheet.More.Length == 0)
        {
            return reply;
        }

        var longer = reply with { Blocks = [reply.Blocks[0], new Block.Line(sheet.More), .. reply.Blocks.Skip(1)] };
        return LineBudget.Of(longer) <= LineBudget.Lines ? longer : reply;
    }

    private static List<Button> Roomed(List<Command> answered) =>
        [.. Rooms
            .Where(room => answered.Exists(form => form.Sheet.Room == room))
            .Select(room => new Button(Label(room), $"help {Word(room)}"))];

    private static List<string> Takes(CommandSheet sheet) =>
        [.. sheet.Takes
            .OrderByDescending(slot => slot.IsRequired)
            .Select(slot => slot.What)
            .Where(what => what is not ("a detail" or "a page"))
            .Distinct()
            .Take(4)];

    private static string Short(string example)
    {
        var words = example.Split(' ');
        var shown = words[0];
        foreach (var word in words.Skip(1))
        {
            if (shown.Length + word.Length + 1 > 19)
            {
                return shown + "…";
            }

            shown += " " + word;
        }

        return shown;
    }

    private static string Lower(string sentence) => char.ToLowerInvariant(sentence[0]) + sentence[1..];

    private static string Word(Room room) => room switch
    {
        Room.Asking => "asking",
        Room.Recording => "recording",
        Room.Sharing => "sharing",
        _ => "house",
    };

    private static string Label(Room room) => room switch
    {
        Room.Asking => "Asking",
        Room.Recording => "Recording",
        Room.Sharing => "Sharing",
        _ => "Keeping house",
    };
}
