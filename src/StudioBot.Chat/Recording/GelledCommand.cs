using StudioBot.Chat.Asking;
using StudioBot.Chat.Coats;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Practice;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary><c>gelled 17</c>, <c>17 gelled 14:20</c>: a coat that has gelled.</summary>
internal sealed class GelledCommand : Act
{
    private static readonly PiecesSlot Pieces = new() { IsRequired = true, Most = 30 };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "gelled", Room.Recording, "When a coat of resin gelled.",
        [Pieces, RecordSlots.Seen],
        ["gelled 17", "17 gelled 14:20"])
    {
        More = "How long it flows is told shorter by it, never longer than the sheet; slips are left out and named.",
        IsElseNoted = true,
    };

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said) => SeenThen.WithWords(said, $"note {said.Of(Pieces)[0]} gelled");

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var pieces = TalkedOf.Pieces(said.Of(Pieces), writing);
        var against = SeenThen.Against(said, writing, $"gelled {pieces[0].Number}");
        if ((against ?? TalkedOf.Before(pieces, writing)) is { } trouble)
        {
            return trouble;
        }

        List<StudioGels.Gel?> gels = [];
        var coats = CoatReckoning
            .Of([.. pieces.Select(piece => piece.Number)], writing.Session, writing.Practice)
            .ToDictionary(coat => coat.Piece);
        foreach (var piece in pieces)
        {
            var coat = coats.GetValueOrDefault(piece.Number);
            if (Against(piece, coat, writing) is { } refused)
            {
                return refused;
            }

            gels.Add(StudioGels.OfCoat(coat!, writing.HappenedAt));
        }

        foreach (var piece in pieces)
        {
            writing.Session.Pieces.Book(piece.Number, new PieceEvent.Note(StudioGels.Sign), writing.Act);
            if (writing.Turn.Photo is { } photo)
            {
                writing.Session.Pieces.Book(
                    piece.Number, new PieceEvent.Photo(photo, StudioGels.Sign), writing.Act);
            }
        }

        writing.Touch(pieces.Select(piece => piece.Number));
        return new Reply(
            [
                Headline(pieces, gels, writing),
                .. gels.OfType<StudioGels.Gel>().FirstOrDefault() is { } gel
                    ? GelTold.Of(gel, writing.Studio)
                    : [new Block.Line("Below 10 °C its sheet says nothing: nothing is learnt from it.")],
                .. LeftOut([.. gels.OfType<StudioGels.Gel>().Skip(1)]),
                Cautions.InAWord(writing.Studio, SafetySubject.ResinSkin),
            ],
            []);
    }

    private static Block.Headline Headline(
        IReadOnlyList<Piece> pieces, List<StudioGels.Gel?> gels, Writing writing) => new(
        gels.Select(gel => gel is null ? "" : Show.Time(gel.Report.After)).Distinct().ToList()
            is [{ Length: > 0 } after]
            ? $"{TalkedOf.Words(pieces)}: gelled {after} after the coat{SeenThen.Behind(writing)}."
            : $"{TalkedOf.Words(pieces)}: gelled{SeenThen.Behind(writing)}.");

    // What is said of the first is said of it; of the others, which are slips.
    private static IEnumerable<Block> LeftOut(IReadOnlyList<StudioGels.Gel> others)
    {
        List<string> slips = [.. others.Where(gel => GelPace.IsSlip(gel.Report))
            .Select(gel => $"{gel.What} ({Show.Time(gel.Report.After)})")];
        return slips.Count == 0 ? [] : [new Block.Line($"Left out as slips: {Sentences.And(slips)}.")];
    }

    private static Reply? Against(Piece piece, CoatReckoning? coat, Writing writing) => coat switch
    {
        null => TalkedOf.Trouble(
            $"{piece.Number} has no coat: nothing on it gels. Nothing recorded.", $"coat {piece.Number} 180 ml 2:1"),
        { HasFailed: true } or { IsSanded: true } => TalkedOf.Trouble(
            $"The coat on {piece.Number} {(coat.IsSanded ? "is sanded" : "failed")}. Nothing recorded.",
            $"coat {piece.Number} 180 ml 2:1"),
        _ when coat.LaidAt >= writing.HappenedAt => TalkedOf.Trouble(
            $"{piece.Number} was coated only {Show.Moment(coat.LaidAt, writing.Turn)}. Nothing recorded.",
            $"gelled {piece.Number}"),
        _ => null,
    };
}
