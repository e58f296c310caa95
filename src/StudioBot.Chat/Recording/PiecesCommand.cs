using StudioBot.Chat.Asking;
using StudioBot.Chat.Drying;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Drying;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary><c>pieces drying</c>: pieces by stage or maker.</summary>
internal sealed class PiecesCommand : Ask
{
    private const int OnAPage = 8;
    private const int PieceButtons = 3;

    private static readonly ChoiceSlot InStage = new("stage", "a stage", Stages);
    private static readonly PersonSlot Maker = new("member") { MayBeMe = true };
    private static readonly PageSlot Page = new();

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "pieces", Room.Recording, "Pieces by stage or maker.",
        [InStage, Maker, Page],
        ["pieces drying", "ready", "my pieces", "pieces"])
    {
        More = "With shelf and days, and a picture of the days that were and those that come.",
        AlsoSaying = ["ready", "mine", "drying", "cured"],
        Cues =
        [
            new("my pieces"),
            new("what/whats/which/show/list drying/ready/coated/cured"),
            new("pieces of/by/from {member}"),
        ],
    };

    private static IReadOnlyDictionary<string, string> Stages => new Dictionary<string, string>
    {
        ["drying"] = "drying",
        ["wet"] = "drying",
        ["ready"] = "ready",
        ["dry"] = "ready",
        ["coated"] = "coated",
        ["curing"] = "coated",
        ["cured"] = "cured",
        ["kept"] = "kept",
        ["sold"] = "sold",
        ["binned"] = "bin",
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var moment = StudioMoment.Of(turn, studio);
        var reckoning = new PieceReckoning(studio.View, studio.Practice, moment.Now);
        var sketch = new PiecesSketch(reckoning, moment, studio);
        var maker = said.Has(Maker) ? said.Of(Maker) == "me" ? turn.Who.Name : said.Of(Maker) : null;
        var stage = said.Or(InStage, "");
        List<PieceStanding> all = [.. reckoning.Pieces
            .Where(piece => maker is null || piece.Maker == maker)
            .Select(piece => new PieceStanding(piece, reckoning, moment, studio))];
        if (stage.Length == 0)
        {
            return maker is null
                ? Counted(all, studio) with { File = sketch.Foremost("pieces.png", all, "in the studio") }
                : Listed(ByStage(all), $"{maker}: ", Count(all.Count), said, sketch, studio);
        }

        List<PieceStanding> there = [.. ByStage(all.Where(one => StageWords.Of(one.Piece.Stage) == stage))];
        var whose = maker is null ? "" : $"{maker}: ";
        if (stage != StageWords.Of(Stage.Ready))
        {
            return Listed(there, whose, $"{there.Count} {StageWords.Counted(Of(stage))}", said, sketch, studio);
        }

        List<PieceStanding> likely = [.. ByStage(all.Where(IsWorthAHand))];
        var check = likely.Count > 0 ? $", {likely.Count} to check by hand" : "";
        return Listed([.. there, .. likely], whose, $"{there.Count} ready{check}", said, sketch, studio);
    }

    private static Stage Of(string stage) => Enum.GetValues<Stage>().First(one => StageWords.Of(one) == stage);

    private static bool IsWorthAHand(PieceStanding one) =>
        one.Look?.Outlook is ReadyOutlook.Expected({ Advice: not ReadyAdvice.Wait });

    private static IReadOnlyList<PieceStanding> ByStage(IEnumerable<PieceStanding> pieces) =>
        [.. pieces.OrderBy(one => one.Piece.Stage).ThenBy(one => one.Order).ThenBy(one => one.Piece.Number)];

    // How many are how far, where nobody said which.
    private static Reply Counted(List<PieceStanding> all, Studio studio)
    {
        List<(Stage Stage, int Count)> counts = [.. Enum.GetValues<Stage>()
            .Select(stage => (stage, all.Count(one => one.Piece.Stage == stage)))
            .Where(pair => pair.Item2 > 0)];
        List<Block> blocks = [new Block.Headline(Count(all.Count))];
        if (counts.Count > 0)
        {
            blocks.Add(new Block.Figures(
                [.. counts.Select(pair => new Figure(StageWords.Counted(pair.Stage), Show.Number(pair.Count, 0)))]));
            blocks.Add(new Block.Line($"Say which: pieces drying, ready, my pieces.{Sentences.Invented(studio)}"));
        }

        return new Reply(blocks, [.. counts.Take(5).Select(pair =>
            new Button(Sentences.Capital(StageWords.Counted(pair.Stage)), $"pieces {StageWords.Asked(pair.Stage)}"))]);
    }

    // Whose they are stands in the words alone: a picture goes on to anybody.
    private static Reply Listed(
        IReadOnlyList<PieceStanding> pieces,
        string whose,
        string headline,
        Phrase said,
        PiecesSketch sketch,
        Studio studio)
    {
        var page = Paging<PieceStanding>.Of(pieces, OnAPage, said.Or(Page, 1));
        List<Block> blocks = [new Block.Headline(whose + headline + page.Words)];
        if (page.Shown.Count > 0)
        {
            blocks.Add(FitRows.Of([.. page.Shown.Select(one => new Figure(one.Name, one.InList))]));
        }

        var days = page.Shown.Any(one => one.Look is not null) ? "Days to be dry, 8 times in 10 between these." : "";
        if ((days + Sentences.Invented(studio)).TrimStart() is { Length: > 0 } line)
        {
            blocks.Add(new Block.Line(line));
        }

        List<Button> buttons = [.. page.Buttons(said, Page)];
        if (page.Shown.Where(one => one.Piece.Stage == Stage.Ready).ToList() is { Count: > 0 } ready)
        {
            buttons.Add(new Button(
                "Resin for the dry", $"resin pieces {string.Join(' ', ready.Select(one => one.Piece.Number))} 2mm"));
        }

        buttons.AddRange(page.Shown.Take(PieceButtons).Select(one =>
            new Button($"Piece {one.Piece.Number}", $"piece {one.Piece.Number}")));

        // Pages turn in place, which a picture's message does not.
        return new Reply(blocks, buttons)
        {
            File = page.Count == 1 ? sketch.Page("pieces.png", headline, page.Shown) : null,
        };
    }

    private static string Count(int count) => count == 1 ? "1 piece" : $"{count} pieces";
}
