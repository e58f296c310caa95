using System.Globalization;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary><c>due 21 28 june 320 for a customer</c>: a promise with a day.</summary>
internal sealed class DueCommand : Act
{
    private static readonly TimeOnly EndOfDay = new(23, 59);

    private static readonly PiecesSlot Piece = new() { IsRequired = true };
    private static readonly WhenSlot When = new(isPast: false, "when") { IsRequired = true };
    private static readonly MoneySlot Price = new();

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "due", Room.Recording, "A promise with a day.",
        [When, Piece, Price],
        ["due 21 28 june 320 for a customer"])
    {
        Also = ["promised"],
        RemarksFreely = true,
    };

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var piece = TalkedOf.Pieces(said.Of(Piece), writing)[0];
        if (TalkedOf.Against(
                [piece], "it can't be promised", null, Stage.Drying, Stage.Ready, Stage.Coated, Stage.Cured, Stage.Kept)
            is { } gone)
        {
            return gone;
        }

        var price = said.Has(Price) ? said.Of(Price) : null;
        if (Priced.Against(price, Sheet.Examples[0], writing) is { } foreign)
        {
            return foreign;
        }

        var when = said.Of(When);
        var day = DateOnly.FromDateTime(when);
        var time = when.TimeOfDay == TimeSpan.Zero ? EndOfDay : TimeOnly.FromDateTime(when);
        var until = writing.Turn.Zone.InstantOf(day, time);
        if (until < writing.Now)
        {
            return TalkedOf.Trouble(
                $"{Show.Date(day, writing.Turn)} is past: a promise is of a day to come. Nothing recorded.",
                Sheet.Examples[0]);
        }

        var words = said.Remark.Length > 0 ? said.Remark : null;
        writing.Session.Pieces.Book(piece.Number, new PieceEvent.Due(until, price?.Sum, words), writing.Act);
        writing.Touch(piece.Number);
        var hour = time == EndOfDay ? "" : $" {time.ToString("HH:mm", CultureInfo.InvariantCulture)}";
        var sum = price is null ? "" : $", {Priced.Words(price.Sum, writing)}";
        return new Reply(
            new Block.Headline($"{piece.Number} is promised for {Show.Date(day, writing.Turn)}{hour}{sum}."),
            new Block.Line((words is null ? "" : $"“{words}”. ")
                + $"It {TalkedOf.Holds(piece.Stage)}; I warn when that day is in danger."));
    }
}
