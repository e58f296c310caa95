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
    private static readonly PersonSlot From = new("from") { Leads = ["from"], HasLeft = true };
    private static readonly PersonSlot To = new("to")
    {
        Leads = [],
        Purse = KittyCash.Word,
        MayHaveLeft = true,
        IsRequired = true,
    };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "paid", Room.Sharing, "Money from one to another.",
        [Sum, FromKitty, From, To, RecordSlots.Day],
        ["paid 30 to Pia", Example, "paid 30 from kitty to Pia"])
    {
        More = "The receiver is asked whether it came; out of the kitty: stewards.",
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
        var payer = said.Has(From) ? Named(said.Of(From), writing) : new Party(author.Id, author.Name, author);
        var receiver = said.Of(To) == KittyCash.Word ? null : Named(said.Of(To), writing);
        if ((Against(price, isKittys ? null : payer, receiver, writing)
                ?? Prices.Against(price, $"paid {price.Sum} to {said.Of(To)}", writing)
                ?? (isKittys ? KittyCash.Against(price.Sum, said.Line, writing) : null))
            is { } refused)
        {
            return refused;
        }

        var giver = isKittys ? KittyCash.Word : payer.Name;
        Account from = isKittys ? new Account.OfKitty() : new Account.OfMember(payer.Id);
        Account other = receiver is { Id: var id } ? new Account.OfMember(id) : new Account.OfKitty();
        writing.Session.Money.Book(
            writing.Act, [new MoneyLine(from, price.Sum), new MoneyLine(other, -price.Sum)]);
        var booked = $"Booked: {giver} +{price.Sum}, {receiver?.Name ?? KittyCash.Word} −{price.Sum}.";
        var how = isKittys ? " out of the kitty" : payer.Here is null ? $" by {payer.Name}" : "";
        if (receiver is null)
        {
            return new Reply(new Block.Headline($"{price.Sum} into the kitty{how}."), new Block.Line(booked));
        }

        // A steward who takes their own has seen it; and who has left is not asked.
        if (receiver.Here is null || receiver.Id == author.Id)
        {
            var payment = writing.Session.Payments.OpenOf(receiver.Id).Single(open => open.ActId == writing.Act.Id);
            writing.Session.Payments.Confirm(payment, writing.Act);
            var whom = receiver.Id == author.Id ? "you" : receiver.Name;
            return new Reply(
                new Block.Headline(isKittys ? $"{price.Sum}{how} to {whom}." : $"{price.Sum} paid to {whom}{how}."),
                new Block.Line(booked));
        }

        writing.Tell(receiver.Here, Asked(price.Sum.ToString(), how, giver, writing));
        return new Reply(
            new Block.Headline($"{price.Sum} paid to {receiver.Name}{how}."),
            new Block.Line($"{booked} Unconfirmed until {receiver.Name} says it came."));
    }

    // Who pays or is paid; who has left is not here.
    private sealed record Party(long Id, string Name, Member? Here);

    private static Party Named(string name, Writing writing) => writing.MemberNamed(name) is { } here
        ? new Party(here.Id, here.Name, here)
        : writing.Session.Members.Names().Where(one => one.Value == name)
            .Select(one => new Party(one.Key, one.Value, null)).Single();

    // The receiver knows best whether it came.
    private static Reply Asked(string sum, string how, string giver, Writing writing) => new(
        [
            new Block.Headline(
                $"{writing.Author.Name} says: {sum} paid to you{how}. Did it come?"),
            new Block.Line("It is booked. If not, take it back."),
        ],
        [
            new Button("Yes, it came", $"received {sum} from {giver}"),
            UndoCommand.Button("No, it did not", writing.Act.Id),
        ]);

    // No payer: the kitty; no receiver: likewise.
    private static Reply? Against(Price price, Party? payer, Party? receiver, Writing writing)
    {
        var isKittys = payer is null;
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
                writing) with
            {
                Refused = "for stewards",
            };
        }

        if (isKittys && receiver is null)
        {
            return OwnMeasure.Trouble(
                "“kitty” can't pay itself", "Name who got it:", "paid 30 from kitty to Pia", writing);
        }

        if (!writing.Turn.Who.IsSteward
            && new[] { payer, receiver }.FirstOrDefault(party => party is { Here: null }) is { } gone)
        {
            return OwnMeasure.Trouble(
                $"“{gone.Name}” has left: a steward books what they pay and get", "Ask one of them, or pay:", Example,
                writing) with
            {
                Refused = "for stewards",
            };
        }

        return receiver is not null && receiver.Id == payer?.Id
            ? OwnMeasure.Trouble(
                receiver.Here is null ? $"“{receiver.Name}” pays and gets it" : $"“{receiver.Name}” is you",
                "Name who got it, or the kitty:",
                Example,
                writing)
            : null;
    }
}
