using StudioBot.Chat.Tests.Support;

namespace StudioBot.Chat.Tests.Whole;

public sealed class MoneyHistoryTests
{
    private static readonly string[] Materials = ["white", "magenta", "medium"];

    [Theory]
    [InlineData(1)]
    [InlineData(20261125)]
    [InlineData(77)]
    public void Whatever_is_said_the_book_stays_at_zero_and_a_balance_is_the_sum_of_its_entries(int seed)
    {
        using var studio = LiveStudio.Sample();
        var random = new Random(seed);
        string[] members = [.. studio.Look(view => view.Members.All().Select(member => member.Name))];
        int[] pieces = [.. studio.Look(view => view.Pieces.All().Select(piece => piece.Number))];
        List<string> said = [];
        var recorded = 0;
        for (var turn = 0; turn < 120; turn++)
        {
            studio.Now += TimeSpan.FromMinutes(random.Next(2, 900));
            var (by, words) = (members[random.Next(members.Length)], Words(random, members, pieces));
            said.Add($"{by}: {words}");
            recorded += studio.Say(words, by, agreed: random.Next(2) == 0).Recorded ? 1 : 0;

            var story = $"seed {seed}:\n{string.Join('\n', said.TakeLast(12))}";
            Assert.True(studio.Balances().Values.Sum() == 0, story);
            Assert.True(studio.Look(view => view.Money.Entries().Sum(entry => entry.Sum.Cents)) == 0, story);
            if (turn % 20 == 19)
            {
                foreach (var member in members)
                {
                    var (balance, entries) = (studio.Balance(member), studio.Entries(member));
                    Assert.True(balance == entries.Sum(entry => entry.Sum), $"{member}, {story}");
                    Assert.True(balance == studio.Balances().GetValueOrDefault(member), $"{member}, {story}");
                }
            }
        }

        Assert.InRange(recorded, 50, 120);
    }

    private static string Words(Random random, string[] members, int[] pieces)
    {
        string Member() => members[random.Next(members.Length)];
        string Material() => Materials[random.Next(Materials.Length)];
        var sum = $"{random.Next(1, 60)}.{random.Next(100):00}";
        return random.Next(13) switch
        {
            0 => $"bought 1 L {Material()} {sum}",
            1 => $"bought 500 ml {Material()} {sum} from kitty",
            2 => $"bought 1 L white {sum}\n500 ml magenta 8.00\npostage 4.90",
            3 or 4 => $"used {random.Next(5, 80)} ml {Material()}",
            5 => $"used {random.Next(5, 80)} ml {Material()} for {Member()}",
            6 => $"count {Material()} {random.Next(100, 900)} ml",
            7 => $"paid {sum} to {Member()}",
            8 => $"paid {sum} to kitty",
            9 => $"paid {sum} from kitty to {Member()}",
            10 => $"received {sum} from {Member()}",
            11 => $"sold {pieces[random.Next(pieces.Length)]} {sum} studio {random.Next(1, 40)}%",
            _ => "undo",
        };
    }
}
