using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;
using StudioBot.Craft.Costs;
using StudioBot.Records.Ledger;
using StudioBot.Records.Pieces;

namespace StudioBot.Chat.Recording;

/// <summary>What the studio gets of a sale: its maker owes it from then on.</summary>
internal static class StudioPart
{
    /// <summary>Why it can't be booked: it is another's money, and only a steward keeps the studio's.</summary>
    /// <param name="pieces">What was sold.</param>
    /// <param name="sum">The studio's share; zero: nothing is booked.</param>
    /// <param name="sample">A message that works.</param>
    /// <param name="writing">The record.</param>
    public static Reply? Against(IReadOnlyList<Piece> pieces, Money sum, string sample, Writing writing) =>
        sum.Cents > 0
        && !writing.Turn.Who.IsSteward
        && pieces.FirstOrDefault(piece => Maker(piece, writing).Id != writing.Author.Id) is { } other
            ? OwnMeasure.Trouble(
                $"“studio”: piece {other.Number} is {other.Maker}'s, and so is what the studio gets of it",
                "The maker or a steward books a share; without one:",
                sample,
                writing) with
            { Refused = "somebody else's" }
            : null;

    /// <summary>Books it from each maker, who is told; what was booked, as a sentence.</summary>
    /// <param name="pieces">What was sold.</param>
    /// <param name="shares">The studio's share of each.</param>
    /// <param name="writing">The record.</param>
    public static string Book(IReadOnlyList<Piece> pieces, IReadOnlyList<Money> shares, Writing writing)
    {
        var owed = pieces.Zip(shares)
            .GroupBy(sold => Maker(sold.First, writing).Id)
            .Select(sold => (
                Maker: Maker(sold.First().First, writing),
                Pieces: sold.Select(one => one.First).ToList(),
                Sum: new Money(sold.Sum(one => one.Second.Cents))))
            .Where(one => one.Sum.Cents > 0)
            .ToList();
        if (owed.Count == 0)
        {
            return "No money is booked with it.";
        }

        writing.Session.Money.Book(writing.Act,
        [
            .. owed.Select(one => new MoneyLine(new Account.OfMember(one.Maker.Id), -one.Sum)),
            new MoneyLine(new Account.OfStudio(), new Money(owed.Sum(one => one.Sum.Cents))),
        ]);
        foreach (var (maker, theirs, sum) in owed.Where(one => one.Maker.Id != writing.Author.Id))
        {
            if (writing.Session.Members.All().FirstOrDefault(member => member.Id == maker.Id) is { } told)
            {
                writing.Tell(told, new Reply(
                    [
                        new Block.Headline($"{TalkedOf.Words(theirs)} {TalkedOf.Are(theirs)} sold: {sum} of it is the "
                            + "studio's."),
                        new Block.Line($"Booked by {writing.Author.Name}. Pay it in:"),
                        new Block.Sample($"paid {sum} to kitty"),
                    ],
                    [new Button("Paid to the kitty", $"paid {sum} to kitty")]));
            }
        }

        var lines = owed.Select(one => $"{one.Maker.Name} −{one.Sum}").Take(3);
        return $"Booked: {string.Join(", ", lines)}, studio +{new Money(owed.Sum(one => one.Sum.Cents))}. "
            + $"Pay it in: paid {owed[0].Sum} to kitty.";
    }

    private static (long Id, string Name) Maker(Piece piece, Writing writing) =>
        writing.Session.Members.Names().Where(member => member.Value == piece.Maker)
            .Select(member => (member.Key, member.Value)).First();
}
