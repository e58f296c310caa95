using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using StudioBot.Records.Pieces;
using Measure = StudioBot.Chat.Reading.Measure;

namespace StudioBot.Chat.Recording;

/// <summary><c>pour 17 318 ml left 40 caught 55</c>: what was mixed, left and caught of a pour.</summary>
internal sealed class PourMeasured : Act
{
    private static readonly PiecesSlot Piece = new() { IsRequired = true };
    private static readonly AmountSlot Mixed = new("what was mixed", "318 ml")
    {
        IsRequired = true,
        Only = Measure.Volume,
    };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "pour", Room.Recording, "What was mixed, left and caught of a pour.",
        [PourSlots.Left, PourSlots.Caught, Mixed, Piece, RecordSlots.Day],
        ["pour 17 318 ml left 40 caught 55"])
    {
        More = "It tells how thick it lies.",
        Also = ["poured"],
    };

    /// <inheritdoc/>
    internal override bool ShowsReadyDays => true;

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var piece = TalkedOf.Pieces(said.Of(Piece), writing)[0];
        var volumes = new PourVolumes(
            Volume(said.Of(Mixed)),
            said.Has(PourSlots.Left) ? Volume(said.Of(PourSlots.Left)) : null,
            said.Has(PourSlots.Caught) ? Volume(said.Of(PourSlots.Caught)) : null);
        if (volumes.Wrong is { } why)
        {
            return TalkedOf.Trouble($"{why}. Nothing recorded.", Sheet.Examples[0]);
        }

        Book(new PieceEvent.Mixed(volumes.Mixed!.Value));
        if (volumes.Left is { } left)
        {
            Book(new PieceEvent.Left(PourVolumes.Bookable(left)));
        }

        if (volumes.Caught is { } caught)
        {
            Book(new PieceEvent.Caught(PourVolumes.Bookable(caught)));
        }

        writing.Touch(piece.Number);
        var known = PourVolumes.Of(writing.Session.Pieces.Lines(piece.Number));
        return new Reply(
            new Block.Headline($"{piece.Number}: {known.Words}."),
            new Block.Line(known.Film(piece, writing.Practice.Pours.SideFilm.Value)));

        void Book(PieceEvent what) => writing.Session.Pieces.Book(piece.Number, what, writing.Act);
    }

    private static Volume Volume(Amount amount) => ((Amount.ByVolume)amount).Volume;
}
