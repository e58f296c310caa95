using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary><c>notyet 17 2 days</c>: a piece that is not dry yet.</summary>
internal sealed class NotYetCommand : Act
{
    private static readonly DurationSlot Wait = new() { InDays = true };
    private static readonly PiecesSlot Pieces = new() { IsRequired = true, Most = 30 };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "notyet", Room.Recording, "A piece that is not dry yet.",
        [Wait, Pieces, RecordSlots.Day],
        ["notyet 17 2 days"])
    {
        More = "Your own judgement overrides the estimate.",
        Also = ["not yet", "not dry"],
        Cues =
        [
            new("still soft/wet/tacky/damp/cool/cold/sticky {number}"),
            new("not dry {number}"),
            new("needs/need/give/wait/more {number} {time}"),
        ],
    };

    /// <inheritdoc/>
    internal override bool ShowsReadyDays => true;

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var pieces = TalkedOf.Pieces(said.Of(Pieces), writing);
        if ((TalkedOf.Before(pieces, writing) ?? TalkedOf.Against(
                pieces, "only what has no coat can be not dry yet", null, Stage.Drying, Stage.Ready)) is { } trouble)
        {
            return trouble;
        }

        DateTimeOffset? until = said.Has(Wait) ? writing.Now + said.Of(Wait) : null;
        foreach (var piece in pieces)
        {
            writing.Session.Pieces.Book(piece.Number, new PieceEvent.NotYet(until), writing.Act);
        }

        writing.Touch(pieces.Select(piece => piece.Number));
        return new Reply(
            new Block.Headline($"{TalkedOf.Words(pieces)}: drying still."),
            new Block.Line(until is { } moment
                ? $"I won't ask before {Show.Moment(moment, writing.Turn)}; the estimate learns from it."
                : "Your word counts; the estimate learns from it."));
    }
}
