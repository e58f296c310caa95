using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary><c>dry 17</c>: a piece that you judge dry.</summary>
internal sealed class DryCommand : Act
{
    private static readonly PiecesSlot Pieces = new() { IsRequired = true, Most = 30 };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "dry", Room.Recording, "A piece that you judge dry.",
        [Pieces, RecordSlots.Day],
        ["dry 17"])
    {
        More = "Your own judgement overrides the estimate.",
        Also = ["dried"],
    };

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var pieces = TalkedOf.Pieces(said.Of(Pieces), writing);
        if ((TalkedOf.Before(pieces, writing)
            ?? TalkedOf.Against(pieces, "only a drying piece gets dry", Stage.Ready, Stage.Drying))
            is { } trouble)
        {
            return trouble;
        }

        foreach (var piece in pieces)
        {
            writing.Session.Pieces.Book(piece.Number, new PieceEvent.Dry(), writing.Act);
        }

        var numbers = pieces.Select(piece => piece.Number).ToList();
        writing.Touch(numbers);
        return new Reply(
            [
                new Block.Headline($"{TalkedOf.Words(pieces)} {TalkedOf.Are(pieces)} ready to coat."),
                new Block.Line("Your word counts; the estimate learns from it."),
            ],
            [new Button("Resin for it", $"resin {string.Join(' ', numbers.Take(20))}")]);
    }
}
