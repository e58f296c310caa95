using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary><c>kept 17</c>: a piece that stays.</summary>
internal sealed class KeptCommand : Act
{
    private static readonly PiecesSlot Pieces = new() { IsRequired = true, Most = 30 };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "kept", Room.Recording, "A piece that stays.",
        [Pieces, RecordSlots.Day],
        ["kept 17"])
    {
        Also = ["keep", "finish", "finished"],
    };

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var pieces = TalkedOf.Pieces(said.Of(Pieces), writing);
        if (TalkedOf.Against(
                pieces, "it can't be kept here", Stage.Kept,
                Stage.Drying, Stage.Ready, Stage.Coated, Stage.Cured) is { } trouble)
        {
            return trouble;
        }

        foreach (var piece in pieces)
        {
            writing.Session.Pieces.Book(piece.Number, new PieceEvent.Kept(), writing.Act);
        }

        writing.Touch(pieces.Select(piece => piece.Number));
        var was = pieces.Where(piece => piece.Stage != Stage.Cured).ToList();
        List<Block> blocks = [new Block.Headline($"{TalkedOf.Words(pieces)} {TalkedOf.Are(pieces)} kept.")];
        if (was.Count > 0)
        {
            blocks.Add(new Block.Line(was.Count == 1
                ? $"It {TalkedOf.Holds(was[0].Stage)}; nobody is asked about it any more."
                : $"Not cured when kept: {TalkedOf.Words(was)}; nobody is asked about them any more."));
        }

        return new Reply(blocks);
    }
}
