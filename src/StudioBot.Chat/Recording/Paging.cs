using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;

namespace StudioBot.Chat.Recording;

/// <summary>One page of an answer that is too long for one, and the buttons to the others.</summary>
/// <typeparam name="T">What stands on a page.</typeparam>
/// <param name="Shown">What stands on this one.</param>
/// <param name="Number">Which page it is, from 1.</param>
/// <param name="Count">How many there are.</param>
internal sealed record Paging<T>(IReadOnlyList<T> Shown, int Number, int Count)
{
    /// <summary>So many to a page; a page behind the last is the last.</summary>
    public static Paging<T> Of(IReadOnlyList<T> all, int each, int page)
    {
        var count = Math.Max(1, (all.Count + each - 1) / each);
        var number = Math.Clamp(page, 1, count);
        return new Paging<T>([.. all.Skip((number - 1) * each).Take(each)], number, count);
    }

    /// <summary>Pages already filled; a page behind the last is the last.</summary>
    public static Paging<T> Of(IReadOnlyList<IReadOnlyList<T>> pages, int page)
    {
        var number = Math.Clamp(page, 1, Math.Max(1, pages.Count));
        return new Paging<T>(pages.Count > 0 ? pages[number - 1] : [], number, Math.Max(1, pages.Count));
    }

    /// <summary>, page 2 of 5; empty where there is one only.</summary>
    public string Words => Count > 1 ? $", page {Number} of {Count}" : "";

    /// <summary>To the next page and to the one before.</summary>
    /// <param name="said">What was asked.</param>
    /// <param name="page">Its page, if any.</param>
    public IEnumerable<Button> Buttons(Phrase said, PageSlot page)
    {
        var line = said.Has(page)
            ? said.Line.Replace($" page {said.Of(page)}", "", StringComparison.Ordinal)
            : said.Line;
        if (Number < Count)
        {
            yield return new Button("Next page", $"{line} page {Number + 1}");
        }

        if (Number > 1)
        {
            yield return new Button("Page before", $"{line} page {Number - 1}");
        }
    }
}
