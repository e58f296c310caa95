using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;

namespace StudioBot.Chat.Replies;

/// <summary>Groups of rows, as many at a time as a phone shows; the others behind a button.</summary>
internal static class RowPages
{
    // A note of what was corrected may follow.
    private const int MostLines = LineBudget.Lines - 1;

    private const int MostButtons = 6;

    /// <summary>Which page is wanted: <c>page 2</c>.</summary>
    public static readonly NumberSlot Page = new(Measure.Turns, "page", "a page", "page 2")
    {
        Leads = ["page"],
        TakesBare = true,
        Least = 1,
        Most = 1000,
    };

    /// <summary>The page that was asked for; past the last one, the last.</summary>
    /// <param name="headline">The answer, on every page.</param>
    /// <param name="above">What stands before the rows, on the first page.</param>
    /// <param name="groups">The rows.</param>
    /// <param name="below">What stands after the rows, on every page.</param>
    /// <param name="said">The message, which the buttons to other pages repeat.</param>
    /// <param name="buttons">What else could be asked next.</param>
    public static Reply Of(
        string headline,
        IReadOnlyList<Block> above,
        IReadOnlyList<RowGroup> groups,
        IReadOnlyList<Block> below,
        Phrase said,
        params IReadOnlyList<Button> buttons)
    {
        List<(string Heading, Figure Row)> left =
            [.. groups.SelectMany(group => group.Rows.Select(row => (group.Heading, row)))];
        for (var page = 1; ; page++)
        {
            List<Block> head = [new Block.Headline(headline), .. page == 1 ? above : []];
            var count = Fitting(head, left, below);
            if (page >= said.Or(Page, 1) || count == left.Count)
            {
                return new Reply(
                    [.. head, .. Shown(left, count), .. below],
                    [.. Turning(said, page, count < left.Count).Concat(buttons).Take(MostButtons)]);
            }

            left.RemoveRange(0, count);
        }
    }

    /// <summary>The message without its page.</summary>
    public static string Line(Phrase said) => said.Has(Page)
        ? said.Line.Replace($" {Page.Say(said)}", "", StringComparison.Ordinal)
        : said.Line;

    private static int Fitting(
        IReadOnlyList<Block> head, List<(string Heading, Figure Row)> rows, IReadOnlyList<Block> below)
    {
        var count = Math.Min(rows.Count, LineBudget.Lines);
        while (count > 1 && LineBudget.Of(new Reply([.. head, .. Shown(rows, count), .. below])) > MostLines)
        {
            count--;
        }

        return count;
    }

    private static IEnumerable<Block> Shown(IReadOnlyList<(string Heading, Figure Row)> rows, int count)
    {
        foreach (var group in rows.Take(count).GroupBy(row => row.Heading))
        {
            if (group.Key.Length > 0)
            {
                yield return new Block.Line(group.Key + ":");
            }

            yield return FitRows.Of([.. group.Select(row => row.Row)]);
        }
    }

    private static IEnumerable<Button> Turning(Phrase said, int page, bool hasMore)
    {
        if (hasMore)
        {
            yield return new Button("More", $"{Line(said)} page {page + 1}");
        }

        if (page > 1)
        {
            yield return new Button("Back", $"{Line(said)} page {page - 1}");
        }
    }
}
