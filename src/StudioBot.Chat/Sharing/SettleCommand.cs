using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Costs;
using StudioBot.Records.Ledger;

namespace StudioBot.Chat.Sharing;

/// <summary><c>settle</c>: who pays what into the kitty, and whom it pays, so that all are at zero.</summary>
internal sealed class SettleCommand : Ask
{
    private const int MostButtons = 4;
    private const int LongestName = 8;

    /// <inheritdoc/>
    public override CommandSheet Sheet { get; } = new(
        "settle", Room.Sharing, "Who pays whom so that all are at zero.",
        [RowPages.Page],
        ["settle"])
    {
        More = "What each pays into the kitty, and whom it pays.",
        Also = ["settlement"],
        StewardsOnly = true,
        PrivateOnly = true,
    };

    /// <inheritdoc/>
    internal override Reply Answer(Phrase said, Turn turn, Studio studio)
    {
        var purses = Purses.Of(studio);
        if (purses.Members.Count == 0)
        {
            return new Reply(
                new Block.Headline("All members are at zero."),
                new Block.Line($"In the kitty: {SignedSum.Plain(purses.InKitty)}.{Sentences.Invented(studio)}"));
        }

        var names = purses.Members.ToDictionary(member => member.Id, member => member.Name);
        var settled = Settlement.Of(
            [.. purses.Members.OrderBy(member => member.Id).Select(member => new Balance(member.Id, member.Sum))],
            purses.InKitty);
        return RowPages.Of(
            Headline(settled),
            [],
            [
                new RowGroup("Into the kitty", Rows(settled.In, names)),
                new RowGroup("Then out of it", Rows(settled.Out, names)),
                new RowGroup("Still owed", Rows(settled.Left, names)),
            ],
            [new Block.Line(Rest(settled, studio) + Sentences.Invented(studio))],
            said,
            Buttons(settled, names, turn, studio));
    }

    private static string Headline(Settlement settled) => settled switch
    {
        { In.Count: 0, Out.Count: 0 } => "No cash to settle with",
        { Left.Count: 0 } => "So all members come to zero:",
        _ => "As far as the cash goes:",
    };

    private static List<Figure> Rows(IReadOnlyList<Balance> sums, Dictionary<long, string> names) =>
        [.. sums.OrderByDescending(one => one.Sum).Select(one => new Figure(names[one.Member], one.Sum.ToString()))];

    // What lies on the shelf was paid by members and used by nobody yet: it is the studio's. What it owes beyond the
    // shelf's worth is gone, and nobody bore it.
    private static string Rest(Settlement settled, Studio studio)
    {
        var studios = studio.View.Money.Balances().Where(line => line.Account is Account.OfStudio)
            .Aggregate(default(Money), (sum, line) => sum + line.Sum);
        List<string> said = [$"In the kitty then: {SignedSum.Plain(settled.InCash)}."];
        if (studios.Cents > 0)
        {
            said.Add($"{studios} of all is the studio's own.");
        }
        else if (settled.Left.Count > 0)
        {
            var there = new Money(Math.Clamp(studio.View.Lots.Worth().Cents, 0, -studios.Cents));
            var gone = -studios - there;
            said.AddRange(there == default ? [] : [$"{there} lies on the shelf: the studio's, owed until it is used."]);
            said.AddRange(gone == default ? [] : [$"{gone} lost and borne by nobody."]);
        }

        return string.Join(' ', said);
    }

    // What a steward can say: the kitty hands out what is in it now, they pay in their own, and who
    // has left says nothing.
    private static IReadOnlyList<Button> Buttons(
        Settlement settled, Dictionary<long, string> names, Turn turn, Studio studio)
    {
        var here = studio.View.Members.All().Select(member => member.Id).ToHashSet();
        var own = settled.In.Where(one => names[one.Member] == turn.Who.Name)
            .Select(one => new Button($"I paid {one.Sum}", $"paid {one.Sum} to kitty"));
        var others = settled.Out.Select(one => new Button(
            $"{one.Sum} to {Short(names[one.Member])}", $"paid {one.Sum} from kitty to {names[one.Member]}"));
        var gone = settled.In.Where(one => !here.Contains(one.Member)).Select(one => new Button(
            $"{one.Sum} by {Short(names[one.Member])}", $"paid {one.Sum} from {names[one.Member]} to kitty"));
        return [.. own.Concat(others).Concat(gone).Take(MostButtons)];
    }

    private static string Short(string name) => Labels.Cut(name, LongestName);
}
