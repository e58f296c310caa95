using System.Globalization;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.House;

/// <summary><c>remind me fri 18:00 check 17</c>: a reminder.</summary>
internal sealed class RemindCommand() : Unopened(records: true)
{
    private static readonly DurationSlot In = new();
    private static readonly WhenSlot When = new(isPast: false, "when");
    private static readonly PersonSlot To = new("to") { MayBeMe = true };
    private static readonly PiecesSlot Piece = new();

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "remind", Room.House, "A reminder.",
        [In, When, To, Piece],
        ["remind me fri 18:00 check 17", "remind me in 2h torch"])
    {
        Also = ["reminder"],
        RemarksFreely = true,
    };

    /// <inheritdoc/>
    internal override Misread? Check(Phrase said) => said.Has(In) || said.Has(When)
        ? null
        : new Misread("", "the time is missing", Sheet.Examples[0]);

    /// <inheritdoc/>
    internal override IEnumerable<Meaning> AlsoUnderstood(Phrase said)
    {
        if (said.Has(In))
        {
            var when = said.Context.Local + said.Of(In);
            yield return new("when", when.ToString("yyyy-MM-ddTHH:mm", CultureInfo.InvariantCulture));
        }

        if (said.Remark.Length > 0)
        {
            yield return new("text", said.Remark);
        }
    }
}
