using StudioBot.Craft.Costs;
using StudioBot.Records.Ledger;

namespace StudioBot.Chat.Sharing;

/// <summary>How the members and the kitty stand.</summary>
/// <param name="Members">Each member whose account is open; above zero: the studio owes them.</param>
/// <param name="InKitty">What lies in the kitty; below zero where it is short.</param>
internal sealed record Purses(IReadOnlyList<(long Id, string Name, Money Sum)> Members, Money InKitty)
{
    /// <summary>As the money book has it.</summary>
    public static Purses Of(Studio studio)
    {
        var names = studio.View.Members.Names();
        var balances = studio.View.Money.Balances();
        return new Purses(
            [.. balances
                .Where(line => line.Account is Account.OfMember)
                .Select(line => (((Account.OfMember)line.Account).MemberId, line.Sum))
                .Select(line => (line.MemberId, names[line.MemberId], line.Sum))],
            -balances.Where(line => line.Account is Account.OfKitty)
                .Aggregate(default(Money), (sum, line) => sum + line.Sum));
    }

    /// <summary>How a member of this name stands; zero where all is settled.</summary>
    public Money SumOf(string name) => Members.FirstOrDefault(member => member.Name == name).Sum;
}
