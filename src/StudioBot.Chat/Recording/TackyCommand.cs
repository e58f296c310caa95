using StudioBot.Chat.Coats;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary><c>tacky 17</c>, <c>17 tacky 14:20</c>: a coat that takes a print and pulls no string.</summary>
internal sealed class TackyCommand : Act
{
    private static readonly PiecesSlot Pieces = new() { IsRequired = true, Most = 30 };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "tacky", Room.Recording, "When a coat of resin got tacky.",
        [Pieces, RecordSlots.Seen],
        ["tacky 17", "17 tacky 14:20"])
    {
        More = "It teaches how long your resin takes: the recoat window only ever narrows by it, within the sheet's. "
            + "Who looks seldom notes a look before it too: 17 not tacky.",
        IsElseNoted = true,
    };

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said) => SeenThen.WithWords(said, $"note {said.Of(Pieces)[0]} tacky");

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var pieces = TalkedOf.Pieces(said.Of(Pieces), writing);
        var against = SeenThen.Against(said, writing, $"tacky {pieces[0].Number}");
        if ((against ?? TalkedOf.Before(pieces, writing)) is { } trouble)
        {
            return trouble;
        }

        var numbers = pieces.Select(piece => piece.Number).ToList();
        var coats = CoatReckoning.Of(numbers, writing.Session, writing.Practice).ToDictionary(coat => coat.Piece);
        if (pieces.Select(piece => Against(piece, coats.GetValueOrDefault(piece.Number), writing))
            .FirstOrDefault(reply => reply is not null) is { } refused)
        {
            return refused;
        }

        foreach (var number in numbers)
        {
            writing.Session.Pieces.Book(number, new PieceEvent.Note(CurePaces.Tacky), writing.Act);
            if (writing.Turn.Photo is { } photo)
            {
                writing.Session.Pieces.Book(number, new PieceEvent.Photo(photo, CurePaces.Tacky), writing.Act);
            }
        }

        writing.Touch(numbers);
        return new Reply([Headline(pieces, [.. coats.Values], writing), .. Told(numbers, coats, writing)], []);
    }

    // Of each resin once: of a coat from which something was learnt, where there is one.
    private static IEnumerable<Block> Told(
        List<int> numbers, Dictionary<int, CoatReckoning> before, Writing writing) =>
        CoatReckoning.Of(numbers, writing.Session, writing.Practice)
            .GroupBy(coat => coat.System.Name)
            .Select(same => same.FirstOrDefault(coat => coat.Pace != before[coat.Piece].Pace) ?? same.First())
            .SelectMany(coat => TackyTold.Of(before[coat.Piece].Pace, coat, writing))
            .Distinct();

    private static Block.Headline Headline(
        IReadOnlyList<Piece> pieces, IReadOnlyList<CoatReckoning> coats, Writing writing) => new(
        coats.Select(coat => Show.Time(writing.HappenedAt - coat.LaidAt)).Distinct().ToList() is [var after]
            ? $"{TalkedOf.Words(pieces)}: tacky {after} after the coat{SeenThen.Behind(writing)}."
            : $"{TalkedOf.Words(pieces)}: tacky{SeenThen.Behind(writing)}.");

    private static Reply? Against(Piece piece, CoatReckoning? coat, Writing writing) => coat switch
    {
        null => TalkedOf.Trouble(
            $"{piece.Number} has no coat; paint that is tacky is not dry yet. Nothing recorded.",
            $"notyet {piece.Number}"),
        { HasFailed: true } or { IsSanded: true } => TalkedOf.Trouble(
            $"The coat on {piece.Number} {(coat.IsSanded ? "is sanded" : "failed")}. Nothing recorded.",
            $"note {piece.Number} tacky"),
        _ when coat.LaidAt >= writing.HappenedAt => TalkedOf.Trouble(
            $"{piece.Number} was coated only {Show.Moment(coat.LaidAt, writing.Turn)}. Nothing recorded.",
            $"tacky {piece.Number}"),
        _ => null,
    };
}
