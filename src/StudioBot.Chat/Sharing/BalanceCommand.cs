using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Costs;

namespace StudioBot.Chat.Sharing;

/// <summary><c>balance</c>: who used, paid and owes what.</summary>
internal sealed class BalanceCommand : Ask
{
    private static readonly PeriodSlot Month = new();
    private static readonly PersonSlot Whose = new("member") { MayHaveLeft = true, MayBeMe = true };
    private static readonly ChoiceSlot Entries = new("", "entries", ["entries"]);

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "balance", Room.Sharing, "Who used, paid and owes what.",
        [RowPages.Page, Month, Whose, Entries],
        ["balance", "balance entries", "balance Pia", "what did i use this month", "balance november entries"])
    {
        More = "Others' only for stewards, no sums in a group; entries: each line of an account, and what stood "
            + "after it.",
        Also = ["balances", "owe"],
        Cues =
        [
            new("what/how use/used/spend/spent/owe month"),
            new("who/what/how owe/owes"),
        ],
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var name = said.Or(Whose, "me") is var whose && whose == "me" ? turn.Who.Name : whose;
        var isOwn = name == turn.Who.Name;
        if (turn.Chat == ChatKind.Group)
        {
            return InGroup(said, name, isOwn, studio);
        }

        if (!isOwn && !turn.Who.IsSteward)
        {
            return new Reply(
                [
                    new Block.Headline("Others' balances are for stewards"),
                    new Block.Line("Your own is told to you alone."),
                ],
                [new Button("My balance", "balance")])
            {
                IsTrouble = true,
                Refused = "for stewards",
            };
        }

        var account = new MemberAccount(name, isOwn, turn, studio);
        if (said.Has(Entries))
        {
            return account.Entries(said.Has(Month) ? said.Of(Month) : null, Stands(name, isOwn, studio), said);
        }

        if (said.Has(Month))
        {
            return MonthUse.Of(said.Of(Month), name, isOwn, said, turn, studio);
        }

        return turn.Who.IsSteward && !said.Has(Whose)
            ? Everybody(name, said, studio)
            : account.Show(Stands(name, isOwn, studio));
    }

    // Anybody may read a group: no sums there, not even one's own.
    private static Reply InGroup(Phrase said, string name, bool isOwn, Studio studio)
    {
        var purses = Purses.Of(studio);
        var isOpen = said.Has(Whose) ? purses.SumOf(name) != default : purses.Members.Count > 0;
        var of = !said.Has(Whose) ? "Balances" : isOwn ? "Your balance" : name;
        return new Reply(
            new Block.Headline($"{of}: {(isOpen ? "open" : "settled")}"),
            new Block.Line($"Sums are told in a private chat only.{Sentences.Invented(studio)}"));
    }

    private static Reply Everybody(string name, Phrase said, Studio studio)
    {
        var purses = Purses.Of(studio);
        return RowPages.Of(
            Stands(name, isOwn: true, studio),
            [],
            [
                new RowGroup("The studio owes", Rows(purses, isOwed: true)),
                new RowGroup("Owe the studio", Rows(purses, isOwed: false)),
            ],
            [new Block.Line((purses.Members.Count == 0 ? "All accounts are settled." : "Who isn't here is settled.")
                + Sentences.Invented(studio))],
            said,
            new Button("My account", "balance me"),
            new Button("Settle", "settle"),
            new Button("The kitty", "kitty"));
    }

    private static List<Figure> Rows(Purses purses, bool isOwed) => [.. purses.Members
        .Where(member => member.Sum > default(Money) == isOwed)
        .OrderByDescending(member => isOwed ? member.Sum : -member.Sum)
        .Select(member => new Figure(member.Name, (isOwed ? member.Sum : -member.Sum).ToString()))];

    private static string Stands(string name, bool isOwn, Studio studio)
    {
        var sum = Purses.Of(studio).SumOf(name);
        var currency = studio.View.Studio.Settings()?.Currency ?? "";
        return (isOwn, sum.Cents) switch
        {
            (true, 0) => "You are settled",
            (true, > 0) => $"The studio owes you {sum} {currency}",
            (true, _) => $"You owe the studio {-sum} {currency}",
            (false, 0) => $"{name} is settled",
            (false, > 0) => $"The studio owes {name} {sum} {currency}",
            _ => $"{name} owes the studio {-sum} {currency}",
        };
    }
}
