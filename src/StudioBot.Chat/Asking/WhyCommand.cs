using StudioBot.Chat.Learning;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Practice;

namespace StudioBot.Chat.Asking;

/// <summary><c>why cracks</c>: likely causes of a fault, and what to change.</summary>
internal sealed class WhyCommand : Ask
{
    private const int OnAPage = 3;

    private static readonly ChoiceSlot Detail = new("", "a detail", new Dictionary<string, string>
    {
        ["further"] = "further",
        ["last"] = "last",
    });

    private static readonly PiecesSlot Number = new();
    private static readonly FaultSlot Fault = new() { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "why", Room.Asking, "Likely causes of a fault, and what to change.",
        [Detail, Number, Fault],
        ["why cracks", "why is my resin sticky", "why did 17 crack"])
    {
        More = "What the pieces with that fault on record share too, or that they are too few to tell.",
        Cues = [new("why")],
        Also = ["whats wrong", "what causes"],
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var fault = studio.Practice.Faults.First(one => one.Name == said.Of(Fault));
        var piece = said.Has(Number) ? studio.View.Pieces.Find(said.Of(Number)[0]) : null;
        var record = FaultRecord.Of(piece, studio) with { Pattern = FaultPatterns.Of(fault.Name, studio) };
        List<Cause> ranked = [.. fault.Causes
            .OrderBy(cause => record.Signs.Of(cause.Sign))
            .ThenBy(cause => cause.Rank)];
        var before = 0;
        for (var page = 0; ; page++)
        {
            var (reply, shown) = Fitting(said, fault, [.. ranked.Skip(before)], page, record, studio);
            if (page == Page(said))
            {
                return reply;
            }

            before += shown;
        }
    }

    private static int Page(Phrase said) => said.Or(Detail, "") switch { "further" => 1, "last" => 2, _ => 0 };

    // As many causes as a phone shows.
    private static (Reply Reply, int Shown) Fitting(
        Phrase said, Fault fault, IReadOnlyList<Cause> left, int page, FaultRecord record, Studio studio)
    {
        for (var count = Math.Min(OnAPage, left.Count); ; count--)
        {
            var reply = Causes(said, fault, [.. left.Take(count)], page, left.Count > count, record, studio);
            if (count <= 1 || LineBudget.Of(reply) <= LineBudget.Lines)
            {
                return (reply, count);
            }
        }
    }

    private static Reply Causes(
        Phrase said,
        Fault fault,
        IReadOnlyList<Cause> causes,
        int page,
        bool hasMore,
        FaultRecord record,
        Studio studio)
    {
        List<Block> blocks =
        [
            new Block.Headline($"{Sentences.Capital(fault.Name)}: {Order(causes.Count, page)}"),
            .. causes.Select((cause, at) =>
                new Block.Line($"{at + 1}. {cause.Why} {cause.Change}{Speaks(cause, record, said)}")),
        ];
        if (page == 0 && record.Line.Length > 0)
        {
            blocks.Add(new Block.Line(record.Line));
        }

        if (page == 0 && record.Pattern is { } pattern)
        {
            blocks.Add(new Block.Line(pattern));
        }

        if (causes.Count > 0)
        {
            blocks.Add(new Block.Line($"{Grounds(causes, record)}{Sentences.Invented(studio)}"));
        }

        if (Subjects(fault, causes) is { Length: > 0 } subjects)
        {
            blocks.Add(Cautions.InShort(studio, subjects));
        }

        var number = said.Has(Number) ? $"{said.Of(Number)[0]} " : "";
        List<Button> buttons = [];
        if (hasMore && page < 2)
        {
            buttons.Add(new Button("More causes", $"why {(page == 0 ? "further" : "last")} {number}{fault.Name}"));
        }

        if (page > 0)
        {
            buttons.Add(new Button("Likeliest", $"why {number}{fault.Name}"));
        }

        return new Reply(blocks, buttons);
    }

    private static string Order(int causes, int page) =>
        causes == 0 ? "no further causes" : page > 0 ? "less likely" : "likeliest first";

    private static string Speaks(Cause cause, FaultRecord record, Phrase said) =>
        record.Signs.Of(cause.Sign) != SignVerdict.For ? ""
        : said.Has(Number) ? " Its record speaks for it." : " The room speaks for it.";

    private static string Grounds(IReadOnlyList<Cause> causes, FaultRecord record)
    {
        var words = causes.Select(cause => cause.Provenance.Words).Distinct().ToList();
        var order = causes.Any(cause => record.Signs.Of(cause.Sign) != SignVerdict.Silent)
            ? "Order by the records here"
            : "The records here don't say";
        return $"{Sentences.Capital(string.Join("; ", words))}. {order}.";
    }

    private static SafetySubject[] Subjects(Fault fault, IReadOnlyList<Cause> causes)
    {
        var text = fault.Name + " " + string.Join(' ', causes.Select(cause => cause.Why + " " + cause.Change));
        List<SafetySubject> subjects = [];
        if (Says(text, "resin", "hardener"))
        {
            subjects.Add(SafetySubject.ResinSkin);
        }

        if (Says(text, "sand dull", "sand it"))
        {
            subjects.Add(SafetySubject.Sanding);
        }

        if (Says(text, "powder"))
        {
            subjects.Add(SafetySubject.Powder);
        }

        return [.. subjects];
    }

    private static bool Says(string text, params ReadOnlySpan<string> words)
    {
        foreach (var word in words)
        {
            if (text.Contains(word, StringComparison.OrdinalIgnoreCase))
            {
                return true;
            }
        }

        return false;
    }
}
