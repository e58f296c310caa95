using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Costs;
using StudioBot.Records.Ledger;

namespace StudioBot.Chat.Sharing;

/// <summary><c>received 30 from Tomas</c>: that what was paid came.</summary>
internal sealed class ReceivedCommand : Act
{
    private const int MostOpen = 3;

    private static readonly MoneySlot Sum = new() { IsRequired = true };
    private static readonly PersonSlot From = new("from")
    {
        Leads = ["from", "by"],
        Purse = KittyCash.Word,
        MayHaveLeft = true,
        IsRequired = true,
    };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "received", Room.Sharing, "That money you were paid came.",
        [Sum, From],
        ["received 30 from Tomas", "received 30 from kitty"])
    {
        More = "Who paid is told.",
        Also = ["receive"],
        IsOwnOnly = true,
        PrivateOnly = true,
    };

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var price = said.Of(Sum);
        var from = new OpenPayments(writing.Session, writing.Author);
        if (Prices.Against(price, $"received {price.Sum} from {said.Of(From)}", writing) is { } foreign)
        {
            return foreign;
        }

        if (from.ToConfirm.FirstOrDefault(payment =>
            payment.Sum == price.Sum && from.Payer(payment) == said.Of(From)) is not { } came)
        {
            return NotOpen(said.Of(From), price.Sum, from, writing);
        }

        writing.Session.Payments.Confirm(came, writing.Act);
        var payer = came.From is Account.OfMember { MemberId: var id } ? id
            : writing.Session.Acts.Find(came.ActId)?.Author?.Id;
        if (writing.Session.Members.All().FirstOrDefault(member => member.Id == payer) is { } told)
        {
            var of = came.From is Account.OfKitty ? " out of the kitty" : "";
            writing.Tell(told, new Reply(
                new Block.Headline($"{writing.Author.Name} confirms: {price.Sum}{of} came."),
                new Block.Line($"Paid {Day(came, writing.Turn)}. Nothing else changes: it was booked then.")));
        }

        var left = from.ToConfirm.Count - 1;
        return new Reply(
            new Block.Headline($"Confirmed: {price.Sum} from {said.Of(From)}, paid {Day(came, writing.Turn)}."),
            new Block.Line(left == 0
                ? "Nothing else waits for your word."
                : $"{left} more wait{(left == 1 ? "s" : "")} for your word: balance me."));
    }

    // The word at fault: who never paid anything open, or the sum.
    private static Reply NotOpen(string from, Money sum, OpenPayments open, Writing writing)
    {
        var theirs = open.ToConfirm.Where(payment => open.Payer(payment) == from).ToList();
        var shown = (theirs.Count > 0 ? theirs : open.ToConfirm).Take(MostOpen).ToList();
        var headline = theirs.Count > 0
            ? $"“{sum}” is not what {from} paid you. Nothing recorded."
            : $"“{from}”: nothing they paid you waits for your word. Nothing recorded.";
        if (shown.Count == 0)
        {
            var isKitty = from == KittyCash.Word;
            return OwnMeasure.Trouble(
                headline.Replace(". Nothing recorded.", "", StringComparison.Ordinal),
                $"No payment to you is open. {(isKitty ? "A steward who hands it out" : "Who paid")} writes it down:",
                $"paid {sum} {(isKitty ? "from kitty " : "")}to {writing.Author.Name}",
                writing);
        }

        return new Reply(
            [
                new Block.Headline(headline),
                new Block.Line("Open:"),
                .. shown.Select(payment => new Block.Sample(open.Confirming(payment))),
            ],
            [.. shown.Select(payment => new Button(
                $"{payment.Sum} {(open.Payer(payment) is { Length: <= 9 } name ? name : "")}".TrimEnd(),
                open.Confirming(payment)))])
        {
            IsTrouble = true,
        };
    }

    private static string Day(Payment payment, Turn turn) =>
        Show.Day(DateOnly.FromDateTime(turn.Zone.LocalOf(payment.HappenedAt)));
}
