namespace StudioBot.Craft.Costs;

/// <summary>How members and the shared cash come to nothing: who owes pays in, and the cash pays whom it owes, as far
/// as it goes.</summary>
/// <param name="In">What each who owes pays in.</param>
/// <param name="Out">What each who is owed gets; together never more than is in it then.</param>
/// <param name="Left">What each is still owed after that; what was laid out for things that lie on the shelf.</param>
/// <param name="InCash">What lies in the shared cash after all of it.</param>
public sealed record Settlement(
    IReadOnlyList<Balance> In, IReadOnlyList<Balance> Out, IReadOnlyList<Balance> Left, Money InCash)
{
    /// <summary>The settlement of these accounts; where cash is short, it is shared by what each is owed.</summary>
    /// <param name="members">How each stands, by the order in which they joined; above zero they are owed.</param>
    /// <param name="inCash">What lies in the shared cash; below zero where it is short.</param>
    public static Settlement Of(IReadOnlyList<Balance> members, Money inCash)
    {
        List<Balance> payIn = [.. members.Where(member => member.Sum.Cents < 0)
            .Select(member => member with { Sum = -member.Sum })];
        List<Balance> owed = [.. members.Where(member => member.Sum.Cents > 0)];
        var there = inCash.Cents + payIn.Sum(member => member.Sum.Cents);
        var goes = new Money(Math.Clamp(there, 0, owed.Sum(member => member.Sum.Cents)));
        var shares = owed.Count == 0 ? [] : goes.Split([.. owed.Select(member => (decimal)member.Sum.Cents)]);
        return new Settlement(
            payIn,
            [.. owed.Select((member, at) => member with { Sum = shares[at] }).Where(member => member.Sum.Cents > 0)],
            [.. owed.Select((member, at) => member with { Sum = member.Sum - shares[at] })
                .Where(member => member.Sum.Cents > 0)],
            new Money(there) - goes);
    }
}
