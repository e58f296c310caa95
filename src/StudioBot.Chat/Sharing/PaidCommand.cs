using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Records.Ledger;
using StudioBot.Records.Members;

namespace StudioBot.Chat.Sharing;

/// <summary><c>paid 30 to Pia</c>: money from one to another.</summary>
internal sealed class PaidCommand : Act
{
    private const string Purse = "kitty";

    private static readonly MoneySlot Sum = new() { IsRequired = true };
    private static readonly PersonSlot To = new("to") { Leads = [], Purse = Purse, IsRequired = true };

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "paid", Room.Sharing, "Money from one to another.",
        [Sum, To, RecordSlots.Day],
        ["paid 30 to Pia", "paid 30 to kitty"])
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
        var (price, author) = (said.Of(Sum), writing.Author);
        var receiver = said.Of(To) == Purse ? null : writing.MemberNamed(said.Of(To));
        if ((Against(price, receiver, writing) ?? Prices.Against(price, $"paid {price.Sum} to {said.Of(To)}", writing))
            is { } refused)
        {
            return refused;
        }

        Account other = receiver is { } member ? new Account.OfMember(member.Id) : new Account.OfKitty();
        writing.Session.Money.Book(writing.Act,
        [
            new MoneyLine(new Account.OfMember(author.Id), price.Sum),
            new MoneyLine(other, -price.Sum),
        ]);
        if (receiver is null)
        {
            return new Reply(
                new Block.Headline($"{price.Sum} into the kitty."),
                new Block.Line($"Booked: {author.Name} +{price.Sum}, kitty −{price.Sum}."));
        }

        writing.Tell(receiver, new Reply(
            [
                new Block.Headline($"{author.Name} says: {price.Sum} paid to you."),
                new Block.Line("It is booked. Did it not arrive? Take it back."),
            ],
            [UndoCommand.Button("Undo", writing.Act.Id)]));
        return new Reply(
            new Block.Headline($"{price.Sum} paid to {receiver.Name}."),
            new Block.Line($"Booked: {author.Name} +{price.Sum}, {receiver.Name} −{price.Sum}. "
                + $"{receiver.Name} is told and may take it back."));
    }

    private static Reply? Against(Price price, Member? receiver, Writing writing) =>
        price.Sum.Cents == 0
            ? OwnMeasure.Trouble("“0” is nothing to book", "Say how much:", "paid 30 to kitty", writing)
            : receiver?.Id == writing.Author.Id
                ? OwnMeasure.Trouble(
                    $"“{receiver.Name}” is you", "Name who got it, or the kitty:", "paid 30 to kitty", writing)
                : null;
}
