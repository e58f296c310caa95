using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Costs;

namespace StudioBot.Chat.Sharing;

/// <summary>What a member used in a month, and what that month moved on their account.</summary>
internal static class MonthUse
{
    /// <summary>Each material with what left the stock for them; what was put back is taken off.</summary>
    /// <param name="month">2026-11.</param>
    /// <param name="name">Whose.</param>
    /// <param name="isOwn">Whether they ask themselves.</param>
    /// <param name="said">The message.</param>
    /// <param name="turn">Who asks, and when.</param>
    /// <param name="studio">The records.</param>
    public static Reply Of(string month, string name, bool isOwn, Phrase said, Turn turn, Studio studio)
    {
        var id = studio.View.Members.Names().FirstOrDefault(member => member.Value == name).Key;
        var materials = studio.View.Materials.All().ToDictionary(material => material.Id, material => material.Name);
        var (from, until) = AccountMonth.Of(month, studio);
        List<Figure> rows = [.. studio.View.Stock.HoldingBetween(from, until)
            .Where(line => line.MemberId == id && StockUse.IsUse(line.Reason))
            .GroupBy(line => line.MaterialId)
            .Select(same => (
                Name: materials[same.Key],
                Like: same.First().Amount,
                Used: same.Sum(line => line.Fills ? -Need.UnitsOf(line.Amount) : Need.UnitsOf(line.Amount))))
            .Where(row => row.Used > 0)
            .Select(row => new Figure(row.Name, Show.Amount(ShelfLevel.Like(row.Like, row.Used))))];
        var moved = studio.View.Accounts.Within(id, from, until)
            .Aggregate(default(Money), (sum, entry) => sum + entry.Sum);
        var count = rows.Count == 1 ? "1 material" : $"{rows.Count} materials";
        return RowPages.Of(
            $"{(isOwn ? "You" : name)} used {(rows.Count == 0 ? "nothing" : count)} in {AccountMonth.Words(month)}",
            [],
            [new RowGroup("", rows)],
            [new Block.Line($"{Moved(moved, studio)}{Sentences.Invented(studio)}")],
            said,
            new Button("Balance", isOwn ? "balance me" : $"balance {name}"),
            new Button("Entries", $"balance {month} {(isOwn ? "me" : name)} entries"));
    }

    private static string Moved(Money moved, Studio studio)
    {
        var currency = studio.View.Studio.Settings()?.Currency ?? "";
        return moved.Cents switch
        {
            0 => "The account did not move.",
            > 0 => $"The account rose by {moved} {currency}.",
            _ => $"The account fell by {-moved} {currency}.",
        };
    }
}
