using System.Globalization;
using System.Text.RegularExpressions;
using StudioBot.Chat.Replies;

namespace StudioBot.Chat.Tests.Support;

/// <summary>What replies about money say, read back as cents.</summary>
internal static partial class Accounts
{
    /// <summary>The sums of all entries, page after page, the newest first, with what stood after each.</summary>
    public static List<(long Sum, long After)> Entries(this LiveStudio studio, string by, string words = "balance me entries")
    {
        List<(long, long)> all = [];
        for (string? line = words; line is not null;)
        {
            var reply = studio.Say(line, by).Reply;
            Assert.True(LineBudget.FiguresFit(reply), reply.PlainText);
            Assert.True(LineBudget.Of(reply) <= LineBudget.Lines, reply.PlainText);
            foreach (var row in reply.Blocks.OfType<Block.Figures>().SelectMany(figures => figures.Rows))
            {
                var sums = row.Value.Split(' ', StringSplitOptions.RemoveEmptyEntries);
                all.Add((Cents(sums[0]), sums.Length > 1 ? Cents(sums[1]) : 0));
            }

            line = reply.Buttons.FirstOrDefault(button => button.Label == "More")?.Line;
        }

        return all;
    }

    /// <summary>The balance that a member reads.</summary>
    public static long Balance(this LiveStudio studio, string by)
    {
        var headline = studio.Hear("balance me", by).Split('\n')[0];
        var sum = Sum().Match(headline);
        return !sum.Success ? 0 : headline.StartsWith("You owe", StringComparison.Ordinal) ? -Cents(sum.Value) : Cents(sum.Value);
    }

    private static long Cents(string sum) =>
        (long)(decimal.Parse(sum.Replace('−', '-').TrimStart('+'), CultureInfo.InvariantCulture) * 100);

    [GeneratedRegex(@"\d+\.\d\d")]
    private static partial Regex Sum();
}
