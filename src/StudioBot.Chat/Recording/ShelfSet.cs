using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Records.Pieces;
using StudioBot.Records.Rooms;

namespace StudioBot.Chat.Recording;

/// <summary><c>shelf 17 B3</c>: where a piece lies.</summary>
internal sealed class ShelfSet : Act
{
    private static readonly PiecesSlot Pieces = new() { IsRequired = true, Most = 30 };
    private static readonly ShelfSlot Shelf = new() { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "shelf", Room.Recording, "Where a piece lies.",
        [Pieces, Shelf, RecordSlots.Day],
        ["shelf 17 B3"])
    {
        Also = ["moved"],
    };

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var pieces = TalkedOf.Pieces(said.Of(Pieces), writing);
        if (TalkedOf.Against(
                pieces, "it lies on no shelf here", null,
                Stage.Drying, Stage.Ready, Stage.Coated, Stage.Cured, Stage.Kept)
            is { } gone)
        {
            return gone;
        }

        var label = said.Of(Shelf);
        var shelf = writing.Session.Rooms.Shelves()
            .FirstOrDefault(one => one.Label.Equals(label, StringComparison.OrdinalIgnoreCase));
        var isNew = shelf is null;
        if (shelf is null && (!writing.Turn.IsAgreed || writing.Session.Rooms.All().Count == 0))
        {
            return Unknown(label, said, writing);
        }

        shelf ??= writing.Session.Rooms.AddShelf(label, writing.Session.Rooms.All()[0], writing.Act);
        foreach (var piece in pieces)
        {
            writing.Session.Pieces.Book(piece.Number, new PieceEvent.Shelved(shelf.Label), writing.Act);
        }

        writing.Touch(pieces.Select(piece => piece.Number));
        return Answer(pieces, shelf, isNew, writing);
    }

    private static Reply Answer(IReadOnlyList<Piece> pieces, Shelf shelf, bool isNew, Writing writing)
    {
        var air = writing.Session.Rooms.Current().FirstOrDefault(reading => reading.Room == shelf.Room);
        List<Block> blocks =
        [
            new Block.Headline(
                $"{TalkedOf.Words(pieces)} {(pieces.Count == 1 ? "lies" : "lie")} on {shelf.Label}, {shelf.Room}."),
            new Block.Line(air is null
                ? $"Nobody has read the air of {shelf.Room} yet."
                : $"Air there: {Show.Degrees(air.Temperature)}, {Show.Number(air.Humidity.Percent, 0)} %."),
        ];
        if (isNew)
        {
            blocks.Add(new Block.Line($"{shelf.Label} is put up in {shelf.Room}."));
        }

        return new Reply(blocks);
    }

    private static Reply Unknown(string label, Phrase said, Writing writing)
    {
        var rooms = writing.Session.Rooms.All();
        var first = rooms is [var room, ..] ? room.Name : null;
        return new Reply(
            [
                new Block.Headline($"There is no shelf {label} here. Nothing recorded."),
                new Block.Line(first is null ? "Name a room first." : "It can be put up:"),
                new Block.Sample($"shelf {label} in {rooms.LastOrDefault()?.Name ?? "studio"}"),
            ],
            first is null ? [] : [new Button(Label(first), said.Line) { Agrees = true }])
        {
            IsTrouble = true,
        };
    }

    private static string Label(string room)
    {
        const int most = 20;
        var label = $"Put it up in {room}";
        return label.Length > most ? "Put it up" : label;
    }
}
