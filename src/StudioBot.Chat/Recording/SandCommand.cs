using StudioBot.Chat.Coats;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Practice;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary><c>sand 18</c>: a piece sanded for the next coat.</summary>
internal sealed class SandCommand : Act
{
    private static readonly PiecesSlot Pieces = new() { IsRequired = true, Most = 30 };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "sand", Room.Recording, "A piece sanded for the next coat.",
        [Pieces, RecordSlots.Day],
        ["sand 18"])
    {
        Also = ["sanded"],
    };

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var pieces = TalkedOf.Pieces(said.Of(Pieces), writing);
        if ((TalkedOf.Before(pieces, writing)
            ?? TalkedOf.Against(pieces, "there is no coat on it to sand", null, Stage.Coated, Stage.Cured))
            is { } trouble)
        {
            return trouble;
        }

        var early = pieces.Where(piece => IsEarly(piece, writing)).ToList();
        foreach (var piece in pieces)
        {
            writing.Session.Pieces.Book(piece.Number, new PieceEvent.Sanded(), writing.Act);
        }

        var numbers = pieces.Select(piece => piece.Number).ToList();
        writing.Touch(numbers);
        List<Block> blocks =
        [
            new Block.Headline($"{TalkedOf.Words(pieces)} sanded: ready for the next coat."),
            new Block.Line("Wipe the dust off wet, let it dry, then coat."),
        ];
        if (early.Count > 0)
        {
            blocks.Add(new Block.Line($"By the sheet {TalkedOf.Words(early)} had not cured yet."));
        }

        blocks.Add(Cautions.InAWord(writing.Studio, SafetySubject.Sanding));
        return new Reply(blocks, [new Button("Resin for it", $"resin {string.Join(' ', numbers.Take(20))}")]);
    }

    private static bool IsEarly(Piece piece, Writing writing) =>
        CoatReckoning.Of(piece.Number, writing.Session, writing.Practice) is { } coat
        && CoatHours.Full(coat) is { } full
        && full > writing.HappenedAt;
}
