using StudioBot.Chat.Replies;
using StudioBot.Craft.Costs;
using StudioBot.Craft.Surfaces;

namespace StudioBot.Chat.Asking;

/// <summary>How a quote looks.</summary>
internal static class QuoteShow
{
    private const int MostRows = 8;

    /// <summary>The price, and what it is made of.</summary>
    /// <param name="quote">Cost and price of all pieces.</param>
    /// <param name="cost">What makes the cost.</param>
    /// <param name="pieces">How many.</param>
    /// <param name="lines">What was read, taken and expected; empty ones are left out.</param>
    /// <param name="buttons">What could be asked next.</param>
    /// <param name="studio">Whose currency.</param>
    public static Reply Price(
        Quote quote,
        PieceCost cost,
        int pieces,
        IReadOnlyList<string> lines,
        IReadOnlyList<Button> buttons,
        Studio studio)
    {
        var currency = studio.View.Studio.Settings()?.Currency ?? "";
        var each = pieces > 1 ? $" for {pieces}, {Money.Rounded((double)quote.Price.Sum / pieces)} each" : "";
        return new Reply(
            [
                new Block.Headline($"Ask {quote.Price} {currency}{each}"),
                new Block.Figures(
                [
                    new Figure("Materials", cost.Materials.ToString()),
                    new Figure($"Work, {Show.Time(cost.Labour)}", cost.Work.ToString()),
                    new Figure("Overhead", cost.Overhead.ToString()),
                    new Figure("Cost", cost.Total.ToString()),
                ]),
                .. lines.Where(line => line.Length > 0).Select(line => new Block.Line(line)),
            ],
            buttons);
    }

    /// <summary>What was asked for; a technique or colours that were only taken stand elsewhere.</summary>
    public static string Made(
        SurfaceSet size,
        string technique,
        int colours,
        CoatNeeds? coat,
        int coats) => string.Join(", ", new[]
    {
        Show.Surfaces(size),
        technique,
        colours > 0 ? Count(colours, "colour") : "",
        coat is null ? "no resin" : $"{Count(coats, "coat")} of {Show.Film(coat.Film)}",
    }.Where(words => words.Length > 0)) + ".";

    /// <summary>What is not in the price.</summary>
    public static string Without(bool hasSurfaces, IReadOnlyList<string> unpriced, Studio studio)
    {
        List<string> without = [.. hasSurfaces ? (string[])[] : ["bare surface"], .. unpriced];
        return string.Join(' ', new[]
        {
            without.Count > 0 ? $"Without {string.Join(", ", without)}." : "",
            studio.IsSample ? "(Invented studio.)" : "",
        }.Where(words => words.Length > 0));
    }

    /// <summary>What each material costs.</summary>
    public static Reply Materials(StockCost stock, IReadOnlyList<string> unknown, Studio studio)
    {
        var currency = studio.View.Studio.Settings()?.Currency ?? "";
        List<Figure> rows = [.. stock.Rows
            .Take(MostRows)
            .Select(row => new Figure(row.Name, Money.Rounded((double)row.Cost).ToString()))];
        if (stock.Rows.Count > MostRows)
        {
            rows.Add(new Figure(
                "the others",
                Money.Rounded((double)stock.Rows.Skip(MostRows).Sum(row => row.Cost)).ToString()));
        }

        List<Block> blocks = [new Block.Headline($"Materials {stock.Total} {currency}")];
        if (rows.Count > 0)
        {
            blocks.Add(new Block.Figures(rows));
        }

        blocks.Add(new Block.Line(
            $"Oldest lots first, with run-off and what stays in cups.{Sentences.Invented(studio)}"));
        if (stock.Unpriced.Concat(unknown).ToList() is { Count: > 0 } unpriced)
        {
            blocks.Add(new Block.Line($"No price here: {string.Join(", ", unpriced)}."));
        }

        return new Reply(blocks);
    }

    private static string Count(int count, string noun) => $"{count} {noun}{(count == 1 ? "" : "s")}";
}
