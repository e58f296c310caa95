using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary><c>bin 17 cracked</c>: a piece given up.</summary>
internal sealed class BinCommand : Act
{
    private const int MostShown = 80;

    private static readonly PiecesSlot Piece = new() { IsRequired = true, Most = 30 };
    private static readonly TextSlot Why = new("a reason", "cracked") { After = Piece };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "bin", Room.Recording, "A piece given up.",
        [Piece, Why],
        ["bin 17 cracked"])
    {
        Also = ["binned"],
        Cues =
        [
            new("ruined/destroyed/broken/broke/smashed/dropped {number}"),
        ],
    };

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var pieces = TalkedOf.Pieces(said.Of(Piece), writing);
        if (TalkedOf.Against(
                pieces, "it can't be given up", Stage.Bin,
                Stage.Drying, Stage.Ready, Stage.Coated, Stage.Cured, Stage.Kept)
            is { } trouble)
        {
            return trouble;
        }

        var why = said.Has(Why) ? said.Of(Why) : null;
        foreach (var piece in pieces)
        {
            writing.Session.Pieces.Book(piece.Number, new PieceEvent.Bin(why), writing.Act);
        }

        writing.Touch(pieces.Select(piece => piece.Number));
        var shown = why is null ? null : Labels.Cut(why, MostShown + 1);
        return new Reply(
            new Block.Headline($"{TalkedOf.Words(pieces)} {TalkedOf.Are(pieces)} in the bin"
                + (shown is null ? "." : $": {shown}.")),
            new Block.Line("What went into it stays booked; nobody is asked about it any more."));
    }
}
