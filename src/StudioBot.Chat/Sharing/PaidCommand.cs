using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Records.Ledger;
using StudioBot.Records.Members;

namespace StudioBot.Chat.Sharing;

/// <summary><c>paid 30 to Pia</c>: money from one to another, or out of the kitty.</summary>
internal sealed class PaidCommand : Act
{
    private const string Example = "paid 30 to kitty";

    private static readonly MoneySlot Sum = new() { IsRequired = true };
    private static readonly ChoiceSlot FromKitty = KittyCash.From();
    private static readonly PersonSlot To = new("to") { Leads = [], Purse = KittyCash.Word, IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "paid", Room.Sharing, "Money from one to another.",
        [Sum, FromKitty, To, RecordSlots.Day],
        ["paid 30 to Pia", Example, "paid 30 from kitty to Pia"])
    {
        Also = ["pay"],
        IsOwnOnly = true,
        Cues =
        [
            new("gave/give/sent/owed/transferred {member}"),
        ],
    };

    /// <inheritdoc/>
    internal override Reply Do(Phrase said, Writing writing)
    {
        var (price, author, isKittys) = (said.Of(Sum), writing.Author, said.Has(FromKitty));
        var receiver = said.Of(To) == KittyCash.Word ? null : writing.MemberNamed(said.Of(To));
        if ((Against(price, receiver, isKittys, writing)
                ?? Prices.Against(price, $"paid {price.Sum} to {said.Of(To)}", writing)
                ?? (isKittys ? KittyCash.Against(price.Sum, said.Line, writing) : null))
            is { } refused)
        {
            return refused;
        }

        Account payer = isKittys ? new Account.OfKitty() : new Account.OfMember(author.Id);
        Account other = receiver is { } member ? new Account.OfMember(member.Id) : new Account.OfKitty();
        writing.Session.Money.Book(
            writing.Act, [new MoneyLine(payer, price.Sum), new MoneyLine(other, -price.Sum)]);
        if (receiver is null)
        {
            return new Reply(
                new Block.Headline($"{price.Sum} into the kitty."),
                new Block.Line($"Booked: {author.Name} +{price.Sum}, kitty −{price.Sum}."));
        }

        // A steward who takes their own out of the kitty has seen it.
        if (receiver.Id == author.Id)
        {
            var payment = writing.Session.Payments.OpenOf(author.Id).Single(open => open.ActId == writing.Act.Id);
            writing.Session.Payments.Confirm(payment, writing.Act);
            return new Reply(
                new Block.Headline($"{price.Sum} out of the kitty to you."),
                new Block.Line($"Booked: kitty +{price.Sum}, {author.Name} −{price.Sum}."));
        }

        writing.Tell(receiver, Asked(price.Sum.ToString(), isKittys, writing));
        return new Reply(
            new Block.Headline($"{price.Sum} paid to {receiver.Name}{(isKittys ? " out of the kitty" : "")}."),
            new Block.Line($"Booked: {(isKittys ? "kitty" : author.Name)} +{price.Sum}, "
                + $"{receiver.Name} −{price.Sum}. Unconfirmed until {receiver.Name} says it came."));
    }

    // The receiver knows best whether it came.
    private static Reply Asked(string sum, bool isKittys, Writing writing) => new(
        [
            new Block.Headline(
                $"{writing.Author.Name} says: {sum} paid to you{(isKittys ? " out of the kitty" : "")}. Did it come?"),
            new Block.Line("It is booked. If not, take it back."),
        ],
        [
            new Button("Yes, it came", $"received {sum} from {(isKittys ? KittyCash.Word : writing.Author.Name)}"),
            UndoCommand.Button("No, it did not", writing.Act.Id),
        ]);

    private static Reply? Against(Price price, Member? receiver, bool isKittys, Writing writing)
    {
        if (price.Sum.Cents == 0)
        {
            return OwnMeasure.Trouble("“0” is nothing to book", "Say how much:", Example, writing);
        }

        if (isKittys && !writing.Turn.Who.IsSteward)
        {
            return OwnMeasure.Trouble(
                "“from kitty” is for stewards: they hand its cash out",
                "Ask one of them; what you bought out of it you can book:",
                "bought 1 L white 18.50 from kitty",
                writing);
        }

        if (isKittys && receiver is null)
        {
            return OwnMeasure.Trouble(
                "“kitty” can't pay itself", "Name who got it:", "paid 30 from kitty to Pia", writing);
        }

        return !isKittys && receiver?.Id == writing.Author.Id
            ? OwnMeasure.Trouble($"“{receiver.Name}” is you", "Name who got it, or the kitty:", Example, writing)
            : null;
    }
}
