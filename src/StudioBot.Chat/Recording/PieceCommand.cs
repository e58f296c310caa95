using StudioBot.Chat.Drying;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;

namespace StudioBot.Chat.Recording;

/// <summary><c>piece 17</c>: the record of a piece.</summary>
internal sealed class PieceCommand : Ask
{
    private static readonly PiecesSlot Piece = new() { IsRequired = true };
    private static readonly ChoiceSlot Detail = new("", "a detail", ["timeline"]);
    private static readonly PageSlot Page = new();

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "piece", Room.Recording, "The record of a piece.",
        [Piece, Detail, Page],
        ["piece 17", "17 dry?"])
    {
        More = "When it will be dry and what that rests on, what it was poured with, where it lies, what "
            + "happened to it; while it dries, a picture of its curve.",
        Also = ["card"],
        Cues =
        [
            new("is/can/should/how/when/did/has/was {number} dry/coat/ready/done/finished/cured/old/yet"),
        ],
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var piece = studio.View.Pieces.Find(said.Of(Piece)[0])
            ?? throw new InvalidOperationException("The reader lets only numbers of pieces pass.");
        var moment = StudioMoment.Of(turn, studio);
        var reckoning = new PieceReckoning(studio.View, studio.Practice, moment.Now);
        if (!said.Has(Detail) && !said.Has(Page))
        {
            var standing = new PieceStanding(piece, reckoning, moment, studio);
            return new PieceCard(standing, reckoning, moment, studio).Show() with
            {
                File = PieceSketch.Of(standing, reckoning, moment),
            };
        }

        var lines = PieceTimeline.Of(piece, reckoning.Lines(piece.Number), moment);
        var paging = Paging<string>.Of(PieceTimeline.Pages(lines), said.Or(Page, 1));
        return new Reply(
            [
                new Block.Headline($"{piece.Number}, what happened{paging.Words}"),
                .. paging.Shown.Select(line => new Block.Line(line)),
            ],
            [.. paging.Buttons(said, Page), new Button("Its record", $"piece {piece.Number}")]);
    }
}
