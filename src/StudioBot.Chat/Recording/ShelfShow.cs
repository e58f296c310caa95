using StudioBot.Chat.Asking;
using StudioBot.Chat.Drying;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Records.Rooms;

namespace StudioBot.Chat.Recording;

/// <summary><c>shelf</c>: what lies where.</summary>
internal sealed class ShelfShow : Ask
{
    private const int OnAPage = 7;
    private const int PieceButtons = 3;
    private const int MostNamed = 8;

    private static readonly ShelfSlot Label = new();
    private static readonly PiecesSlot Piece = new();
    private static readonly PageSlot Page = new();

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "shelf", Room.Recording, "What lies where.",
        [Label, Piece, Page],
        ["shelf", "shelf B", "where is 17?"])
    {
        More = "What comes free when, too; with a picture like that of pieces.",
        Cues =
        [
            new("where/wheres {number}"),
            new("what/whats/which/who shelf"),
            new("where piece {number}"),
        ],
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var moment = StudioMoment.Of(turn, studio);
        var reckoning = new PieceReckoning(studio.View, studio.Practice, moment.Now);
        List<PieceStanding> pieces = [.. reckoning.Pieces
            .Select(piece => new PieceStanding(piece, reckoning, moment, studio))];
        if (said.Has(Piece))
        {
            return Where(pieces.First(one => one.Piece.Number == said.Of(Piece)[0]), reckoning, studio);
        }

        var sketch = new PiecesSketch(reckoning, moment, studio);
        var shelves = studio.View.Rooms.Shelves();
        pieces.RemoveAll(one => one.IsEnded);
        var lying = pieces.ToLookup(one => one.Piece.Shelf ?? "", StringComparer.OrdinalIgnoreCase);
        if (!said.Has(Label))
        {
            return All(shelves, lying, said, moment, sketch, studio);
        }

        var label = said.Of(Label);
        return shelves.FirstOrDefault(shelf => Is(shelf.Label, label)) is { } one
            ? Only(one, [.. lying[one.Label]], said, sketch, studio)
            : shelves.Where(shelf => IsInRow(shelf.Label, label)).ToList() is { Count: > 0 } row
                ? Row(row, label, lying, said, moment, sketch, studio)
                : Unknown(label, shelves, turn);
    }

    private static bool Is(string label, string said) => string.Equals(label, said, StringComparison.OrdinalIgnoreCase);

    // B1 and B12 stand in row B, BA1 does not.
    private static bool IsInRow(string label, string row) => label.Length > row.Length
        && label.StartsWith(row, StringComparison.OrdinalIgnoreCase)
        && (char.IsAsciiDigit(label[row.Length]) != char.IsAsciiDigit(row[^1]));

    private static Reply Where(PieceStanding one, PieceReckoning reckoning, Studio studio)
    {
        var place = (one.Piece.Shelf, reckoning.RoomOf(one.Piece)) switch
        {
            _ when one.IsEnded => one.Answer,
            ({ } shelf, { } room) => $"on {shelf}, {room}",
            _ => "on no shelf",
        };
        List<Block> blocks = [new Block.Headline($"{one.Piece.Number}: {place}")];
        var what = $"{Sentences.Capital(one.Piece.Technique)}, {one.Size}, by {one.Piece.Maker}.";
        blocks.Add(new Block.Line(
            (one.IsEnded ? "" : Sentences.Of(one.Answer) + " ") + what + Sentences.Invented(studio)));
        List<Button> buttons = [new("Its record", $"piece {one.Piece.Number}")];
        if (one.Piece.Shelf is { } on && !one.IsEnded && ShelfSlot.IsLabel(on))
        {
            buttons.Add(new Button($"Shelf {on}", $"shelf {on}"));
        }

        return new Reply(blocks, buttons);
    }

    private static Reply All(
        IReadOnlyList<Shelf> shelves,
        ILookup<string, PieceStanding> lying,
        Phrase said,
        StudioMoment moment,
        PiecesSketch sketch,
        Studio studio)
    {
        List<Shelf> taken = [.. shelves.Where(shelf => lying[shelf.Label].Any())];
        List<string> free = [.. shelves.Where(shelf => !lying[shelf.Label].Any()).Select(shelf => shelf.Label)];
        List<string> lines = [];
        if (free.Count > 0)
        {
            lines.Add($"Free: {Named(free)}.");
        }

        if (lying[""].Select(one => $"{one.Piece.Number}").ToList() is { Count: > 0 } loose)
        {
            lines.Add($"On no shelf: {Named(loose)}.");
        }

        return Rows(
            taken,
            "on the shelves",
            $"{Count(shelves.Count)}, {free.Count} free",
            lines,
            lying,
            said,
            moment,
            sketch,
            studio);
    }

    private static Reply Row(
        List<Shelf> row,
        string label,
        ILookup<string, PieceStanding> lying,
        Phrase said,
        StudioMoment moment,
        PiecesSketch sketch,
        Studio studio)
    {
        var count = row.Sum(shelf => lying[shelf.Label].Count());
        return Rows(
            row,
            $"on shelf {label}",
            $"Shelf {label}: {(count == 1 ? "1 piece" : $"{count} pieces")}",
            [],
            lying,
            said,
            moment,
            sketch,
            studio);
    }

    private static Reply Rows(
        List<Shelf> shelves,
        string where,
        string headline,
        IReadOnlyList<string> lines,
        ILookup<string, PieceStanding> lying,
        Phrase said,
        StudioMoment moment,
        PiecesSketch sketch,
        Studio studio)
    {
        var page = Paging<Shelf>.Of(shelves, OnAPage, said.Or(Page, 1));
        List<Block> blocks = [new Block.Headline(headline + page.Words)];
        if (page.Shown.Count > 0)
        {
            blocks.Add(FitRows.Of(
                [.. page.Shown.Select(shelf => Row(shelf.Label, [.. lying[shelf.Label]], moment))]));
        }

        blocks.AddRange(lines.Select(line => new Block.Line(line)));
        if (Sentences.Invented(studio).TrimStart() is { Length: > 0 } invented)
        {
            blocks.Add(new Block.Line(invented));
        }

        return new Reply(blocks, [.. page.Buttons(said, Page), .. page.Shown
            .Where(shelf => lying[shelf.Label].Any() && ShelfSlot.IsLabel(shelf.Label))
            .Take(PieceButtons)
            .Select(shelf => new Button($"Shelf {shelf.Label}", $"shelf {shelf.Label}"))])
        {
            File = page.Count == 1
                ? sketch.Foremost("shelf.png", [.. page.Shown.SelectMany(shelf => lying[shelf.Label])], where)
                : null,
        };
    }

    private static Reply Only(
        Shelf shelf, IReadOnlyList<PieceStanding> lying, Phrase said, PiecesSketch sketch, Studio studio)
    {
        var page = Paging<PieceStanding>.Of(lying, OnAPage, said.Or(Page, 1));
        List<Block> blocks =
        [
            new Block.Headline(lying.Count == 0
                ? $"{shelf.Label}, {shelf.Room}: free"
                : $"{shelf.Label}, {shelf.Room}{page.Words}"),
        ];
        if (lying.Count > 0)
        {
            blocks.Add(FitRows.Of([.. page.Shown.Select(one =>
                new Figure($"{one.Piece.Number} {one.Size}", one.InList))]));
        }

        if (Sentences.Invented(studio).TrimStart() is { Length: > 0 } invented)
        {
            blocks.Add(new Block.Line(invented));
        }

        return new Reply(blocks, [.. page.Buttons(said, Page), .. page.Shown
            .Take(PieceButtons)
            .Select(one => new Button($"Piece {one.Piece.Number}", $"piece {one.Piece.Number}"))])
        {
            File = page.Count == 1 ? sketch.Page("shelf.png", $"{shelf.Label}, {shelf.Room}", page.Shown) : null,
        };
    }

    private static Reply Unknown(string label, IReadOnlyList<Shelf> shelves, Turn turn) => new(
        [
            new Block.Headline($"“{label}” is no shelf here."),
            new Block.Line(shelves.Count == 0 ? "None is named yet." : "Try"),
            new Block.Sample(Typed.In(turn, "shelf")),
        ],
        [])
    {
        IsTrouble = true,
    };

    private static Figure Row(string label, IReadOnlyList<PieceStanding> lying, StudioMoment moment)
    {
        var numbers = string.Join(' ', lying.Select(one => one.Piece.Number));
        return new Figure(lying.Count > 0 ? $"{label}: {numbers}" : label, Comes(lying, moment));
    }

    // When the last of them may go: a shelf is free only then. Where nobody can say, how far that one is.
    private static string Comes(IReadOnlyList<PieceStanding> lying, StudioMoment moment) =>
        lying.Count == 0 ? "free"
        : lying.FirstOrDefault(one => one.FreeOn is null) is { } open ? open.InList
        : lying.Max(one => one.FreeOn) is { } last && last > moment.Today ? $"by {Show.Day(last)}"
        : "now";

    private static string Named(List<string> names) => names.Count > MostNamed
        ? string.Join(", ", names.Take(MostNamed)) + $" and {names.Count - MostNamed} more"
        : string.Join(", ", names);

    private static string Count(int count) => count == 1 ? "1 shelf" : $"{count} shelves";
}
