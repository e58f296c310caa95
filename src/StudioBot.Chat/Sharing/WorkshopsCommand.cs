using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Replies;
using StudioBot.Records.Workshops;

namespace StudioBot.Chat.Sharing;

/// <summary><c>workshops</c>: what is set aside for workshops to come.</summary>
internal sealed class WorkshopsCommand : Ask
{
    private const int MostButtons = 4;

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "workshops", Room.Sharing, "What is set aside for workshops to come.",
        [RowPages.Page],
        ["workshops"])
    {
        More = "Each with a button that cancels it.",
        Also = ["reservations"],
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var coming = studio.View.Workshops.After(turn.Now);
        if (coming.Count == 0)
        {
            return new Reply(
                new Block.Headline("No workshop is reserved"),
                new Block.Line("What one takes, with a button that sets it aside:" + Sentences.Invented(studio)),
                new Block.Sample(Typed.In(turn, "workshop sat 10:00 8 people 2 tiles 10cm 5 colours")));
        }

        var names = studio.View.Materials.All().ToDictionary(one => one.Id, one => one.Name);
        return RowPages.Of(
            coming.Count == 1 ? "1 workshop to come" : $"{coming.Count} workshops to come",
            [],
            [.. coming.Select(one => new RowGroup(
                $"{Reservation.Moment(one, studio)}, {ReserveCommand.People(one.People)}",
                [.. one.Takes.Select(part => new Figure(names[part.Key], Show.Amount(part.Value)))]))],
            [],
            said,
            [.. coming.Take(MostButtons).Select(one => Cancel(one, studio))]);
    }

    private static Button Cancel(Workshop workshop, Studio studio) =>
        UndoCommand.Button(Labels.Short($"Cancel {Reservation.Day(workshop, studio)}"), workshop.ActId);
}
