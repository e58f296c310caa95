using System.Globalization;
using StudioBot.Chat.Pictures;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Units;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary><c>label 17</c>: labels to print.</summary>
internal sealed class LabelCommand : Ask
{
    private const string Picture = "picture";
    private const string A4 = "a4";
    private const string Letter = "letter";
    private const string Pdf = "application/pdf";

    private static readonly PiecesSlot Pieces = new() { IsRequired = true, Most = 30 };
    private static readonly ChoiceSlot Form = new("form", "a form", new Dictionary<string, string>
    {
        [Picture] = Picture,
        ["png"] = Picture,
        [A4] = A4,
        [Letter] = Letter,
    });

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "label", Room.Recording, "Labels to print.",
        [Pieces, Form],
        ["label 17", "label 17 18 21", "label 17 picture"])
    {
        More = "As PDF on A4 or US letter, or as a picture: number, day, technique, and a code that opens the "
            + "piece in the chat; no names.",
        Also = ["labels"],
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var numbers = said.Of(Pieces).Distinct().ToList();
        var form = said.Or(Form, turn.Who.Units == UnitSystem.Metric ? A4 : Letter);
        if (form == Picture && numbers.Count > LabelSheet.MostInPicture)
        {
            return new Reply(
                new Block.Headline(
                    $"A picture shows {LabelSheet.MostInPicture} labels; {numbers.Count} go on a sheet:"),
                new Block.Sample($"label {Named(numbers)}"))
            {
                IsTrouble = true,
            };
        }

        var pieces = numbers
            .Select(number => studio.View.Pieces.Find(number)
                ?? throw new InvalidOperationException("The reader lets only numbers of pieces pass."))
            .ToList();
        IReadOnlyList<LabelFigures> labels = [.. pieces.Select(piece => Of(piece, turn, studio))];
        var sheet = form == Letter ? LabelSheet.Letter : LabelSheet.A4;
        return new Reply(
            [
                new Block.Headline(pieces.Count == 1 ? $"Label of {Named(numbers)}" : $"{pieces.Count} labels"),
                new Block.Line(form == Picture
                    ? $"Print {(pieces.Count == 1 ? "it" : "each")} 6 cm wide or more."
                    : Paper(form, sheet, pieces.Count)),
                new Block.Line(turn.Link is null
                    ? "Its code says the piece's line: no chat service knows me here."
                    : "A phone's camera opens the piece here by its code; only members are answered."),
            ],
            [.. Others(form, numbers)])
        {
            File = form == Picture
                ? ReplyFile.Picture($"label-{Joined(numbers)}.png", () => LabelSheet.Png(labels))
                : new ReplyFile($"labels-{Joined(numbers)}.pdf", Pdf, sheet.Pdf(labels)),
        };
    }

    private static LabelFigures Of(Piece piece, Turn turn, Studio studio) => new(
        piece.Number,
        DateOnly.FromDateTime(studio.Zone.LocalOf(piece.PouredAt)),
        piece.Technique,
        turn.Link is { } link ? link(Address.CodeOf(piece.Number)) : $"piece {Figures(piece.Number)}");

    private static string Paper(string form, LabelSheet sheet, int labels)
    {
        var pages = (labels + sheet.OnPage - 1) / sheet.OnPage;
        return $"{(form == Letter ? "US letter" : "A4")}, {(pages == 1 ? "a page" : $"{pages} pages")}: each "
            + $"{Show.Number(sheet.Label.Width / 10)} × {Show.Number(sheet.Label.Height / 10)} cm. Print it unscaled.";
    }

    private static IEnumerable<Button> Others(string form, List<int> numbers)
    {
        if (form != A4)
        {
            yield return new Button("On A4", $"label {Named(numbers)} {A4}");
        }

        if (form != Letter)
        {
            yield return new Button("On US letter", $"label {Named(numbers)} {Letter}");
        }

        if (form != Picture && numbers.Count <= LabelSheet.MostInPicture)
        {
            yield return new Button("As a picture", $"label {Named(numbers)} {Picture}");
        }
    }

    private static string Named(IEnumerable<int> numbers) => string.Join(' ', numbers.Select(Figures));

    // A name that no disk finds too long.
    private static string Joined(List<int> numbers) =>
        numbers.Count == 1 ? Figures(numbers[0]) : $"{Figures(numbers[0])}-to-{Figures(numbers[^1])}";

    private static string Figures(int number) => number.ToString(CultureInfo.InvariantCulture);
}
