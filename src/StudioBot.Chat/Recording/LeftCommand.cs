using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Records.Pieces;
using Measure = StudioBot.Chat.Reading.Measure;

namespace StudioBot.Chat.Recording;

/// <summary><c>left 40 ml from 17</c>: what was left in the cups.</summary>
internal sealed class LeftCommand : Act
{
    private static readonly AmountSlot Amount = new("an amount", "40 ml")
    {
        IsRequired = true,
        Only = Measure.Volume,
        MayBeNothing = true,
    };
    private static readonly PiecesSlot Piece = new() { IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "left", Room.Recording, "What was left in the cups.",
        [Amount, Piece, RecordSlots.Day],
        ["left 40 ml from 17"])
    {
        More = "With what was mixed and caught it tells how thick the pour lies.",
        Also = ["left over", "leftover", "leftovers"],
    };

    /// <inheritdoc/>
    internal override bool ShowsReadyDays => true;

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var piece = TalkedOf.Pieces(said.Of(Piece), writing)[0];
        if (TalkedOf.Before([piece], writing) is { } early)
        {
            return early;
        }

        var left = ((Records.Materials.Amount.ByVolume)said.Of(Amount)).Volume;
        var known = PourVolumes.Of(writing.Session.Pieces.Lines(piece.Number)) with { Left = left };
        if (known.Wrong is { } why)
        {
            return TalkedOf.Trouble($"{why}. Nothing recorded.", Sheet.Examples[0]);
        }

        writing.Session.Pieces.Book(
            piece.Number, new PieceEvent.Left(PourVolumes.Bookable(left)), writing.Act);
        writing.Touch(piece.Number);
        return new Reply(
            new Block.Headline($"{piece.Number}: {known.Words}."),
            new Block.Line(known.Film(piece, writing.Practice.Pours.SideFilm.Value)));
    }
}
