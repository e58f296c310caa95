using SkiaSharp;

namespace StudioBot.Chat.Pictures;

/// <summary>The picture of several pieces: a row each, with bars over the days that were and those that come.</summary>
internal static class PiecesPicture
{
    /// <summary>The most rows that can be read off a phone.</summary>
    public const int MostRows = 14;

    private const float Edge = Sheet.Width - Sheet.Margin;
    private const float NowTop = 148;
    private const float MarksTop = 190;
    private const float RowsTop = 240;
    private const float Below = 16;
    private const float Bottom = 26;
    private const float LineHeight = 46;
    private const float LeastHeight = 720;
    private const float UsualRow = 58;
    private const float MostBar = 64;

    // A window of a few hours is to be seen among weeks.
    private const float LeastBar = 16;

    private const float DaysApart = 130;
    private const float MostName = 400;
    private const float MostStanding = 300;
    private const float Gap = 16;

    // At both ends of the days, for the marks of what goes on beyond them.
    private const float Gutter = 26;

    // Nothing further off is shown: six weeks take as much room as a bar of a day needs.
    private const double MostDays = 42;
    private const double FewestDays = 3.5;

    /// <summary>The bytes of the picture.</summary>
    public static byte[] Png(PiecesFigures figures)
    {
        using var sheet = Drawn(figures);
        return sheet.Png();
    }

    /// <summary>The picture as drawn, to look into; to be disposed of.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no piece, or more than fit.</exception>
    public static Sheet Drawn(PiecesFigures figures)
    {
        ArgumentOutOfRangeException.ThrowIfZero(figures.Rows.Count, nameof(figures));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(figures.Rows.Count, MostRows, nameof(figures));
        var names = Widest(figures.Rows.Select(Whole), MostName);
        var standings = Widest(figures.Rows.Select(row => row.Standing), MostStanding);
        var (left, right) = (Sheet.Margin + names + Gap, Edge - standings - Gap);
        var across = Across(figures, left + Gutter, right - Gutter);

        var entries = Entries(figures, across);
        var under = Below + (figures.More > 0 ? LineHeight : 0) + Legend.HeightOf(entries) + Bottom;
        var count = figures.Rows.Count;
        var height = Math.Min(
            Math.Max(UsualRow, (LeastHeight - RowsTop - under) / count), (Sheet.Width - RowsTop - under) / count);
        var area = new SKRect(left, RowsTop, right, RowsTop + height * count);
        var sheet = new Sheet((int)Math.Ceiling(area.Bottom + under));

        Head(sheet, figures);
        Marks(sheet, figures, across, area);
        for (var at = 0; at < count; at++)
        {
            var box = SKRect.Create(left, RowsTop + at * height, area.Width, height);
            Row(sheet, figures, figures.Rows[at], across, box);
        }

        Now(sheet, figures, across, area);
        sheet.Outline(area);
        var top = area.Bottom + Below;
        if (figures.More > 0)
        {
            var words = $"and {figures.More} more";
            sheet.Write(words, new SKRect(Sheet.Margin, top, Edge, top + LineHeight), Lettering.Strong);
            top += LineHeight;
        }

        Legend.Write(sheet, top, entries);
        return sheet;
    }

    private static void Head(Sheet sheet, PiecesFigures figures)
    {
        sheet.Write(figures.Title, new SKRect(Sheet.Margin, 30, Edge, 98), Lettering.Title);
        sheet.Write(figures.Line, new SKRect(Sheet.Margin, 100, Edge, 146), Lettering.Plain, ink: Ink.Quiet);
    }

    private static float Widest(IEnumerable<string> words, float most) =>
        Math.Min(most, words.Max(Lettering.Plain.WidthOf) + 2);

    private static string Whole(PieceRow row) => Joined(row, row.Shelf);

    private static string Joined(PieceRow row, string shelf) =>
        string.Join(' ', new[] { $"{row.Number}", shelf, row.Size }.Where(word => word.Length > 0));

    // A long shelf is shortened before the size is.
    private static string Named(PieceRow row, float room)
    {
        var rest = Lettering.Plain.WidthOf(Joined(row, "") + " ");
        var shelf = Shortened.To(row.Shelf, Math.Max(room - rest, Lettering.Plain.WidthOf("MM…")), Lettering.Plain);
        return Joined(row, shelf);
    }

    // Days since the midnight before now, as far as a piece has bars.
    private static Scale Across(PiecesFigures figures, float first, float last)
    {
        var now = Since(figures, figures.Now);
        List<PieceBar> bars = [.. figures.Rows.SelectMany(row => row.Bars)];
        var from = bars.Select(bar => Since(figures, bar.From)).DefaultIfEmpty(now).Min();
        var to = bars.Select(bar => Since(figures, bar.To)).DefaultIfEmpty(now).Max();
        return new Scale(
            Math.Clamp(from, now - MostDays, now - FewestDays),
            Math.Clamp(to, now + FewestDays, now + MostDays),
            first,
            last);
    }

    private static double Since(PiecesFigures figures, DateTime at) => (at - figures.Now.Date).TotalDays;

    // Guides at midnight, so that a day lies between two lines.
    private static void Marks(Sheet sheet, PiecesFigures figures, Scale across, SKRect area)
    {
        const float half = DaysApart / 2;
        foreach (var mark in across.RoundDays(DaysApart))
        {
            var at = across.Pixel(mark);
            sheet.Line(new SKPoint(at, area.Top), new SKPoint(at, area.Bottom), Ink.Guide, 2);
            sheet.Write(
                Replies.Show.Day(DateOnly.FromDateTime(figures.Now.Date.AddDays(mark))),
                new SKRect(at - half, MarksTop, at + half, RowsTop - 4),
                Lettering.Plain,
                Side.Middle);
        }
    }

    private static void Now(Sheet sheet, PiecesFigures figures, Scale across, SKRect area)
    {
        var at = across.Pixel(Since(figures, figures.Now));
        sheet.Line(new SKPoint(at, area.Top), new SKPoint(at, area.Bottom), Ink.Words, 4, 4, 7);
        sheet.Write("now", new SKRect(at - 60, NowTop, at + 60, MarksTop), Lettering.Strong, Side.Middle);
    }

    private static void Row(Sheet sheet, PiecesFigures figures, PieceRow row, Scale across, SKRect box)
    {
        var name = new SKRect(Sheet.Margin, box.Top, box.Left - Gap, box.Bottom);
        sheet.Write(Named(row, name.Width), name, Lettering.Plain);
        sheet.Write(row.Standing, new SKRect(box.Right + Gap, box.Top, Edge, box.Bottom), Lettering.Plain);
        sheet.Line(new SKPoint(box.Left, box.Bottom), new SKPoint(box.Right, box.Bottom), Ink.Guide, 2);
        if (row.Bars.Count == 0)
        {
            return;
        }

        var (first, last) = (row.Bars.Min(bar => bar.From), row.Bars.Max(bar => bar.To));
        var (from, to) = (Within(across, Since(figures, first)), Within(across, Since(figures, last)));
        sheet.Line(new SKPoint(from, box.MidY), new SKPoint(to, box.MidY), Ink.Words, 2);
        foreach (var bar in row.Bars.Where(bar => IsSeen(figures, bar, across)))
        {
            Bar(sheet, figures, bar, across, box);
        }

        if (IsBefore(figures, row, across))
        {
            sheet.Arrow(new SKPoint(box.Left + 5, box.MidY), Gutter - 9, 11);
        }

        if (IsAfter(figures, row, across))
        {
            sheet.Arrow(new SKPoint(box.Right - 5, box.MidY), 9 - Gutter, 11);
        }
    }

    private static void Bar(Sheet sheet, PiecesFigures figures, PieceBar bar, Scale across, SKRect row)
    {
        var (from, to) = (Within(across, Since(figures, bar.From)), Within(across, Since(figures, bar.To)));
        if (to - from < LeastBar)
        {
            // What was does not reach beyond now.
            from = Math.Clamp(
                bar.To <= figures.Now ? to - LeastBar : from, across.First, across.Last - LeastBar);
            to = from + LeastBar;
        }

        // A window stands out of the coat that cures under it.
        var height = Math.Min(row.Height - 18, MostBar);
        var half = (bar.Spell == PieceSpell.Window ? height + 10 : height - 6) / 2;
        PieceBars.Draw(sheet, new SKRect(from, row.MidY - half, to, row.MidY + half), bar.Spell);
    }

    private static float Within(Scale across, double day) =>
        across.Pixel(Math.Clamp(day, across.From, across.To));

    private static bool IsSeen(PiecesFigures figures, PieceBar bar, Scale across) =>
        Since(figures, bar.To) >= across.From && Since(figures, bar.From) <= across.To;

    private static bool IsBefore(PiecesFigures figures, PieceRow row, Scale across) =>
        row.Bars.Any(bar => Since(figures, bar.From) < across.From - 1e-6);

    private static bool IsAfter(PiecesFigures figures, PieceRow row, Scale across) =>
        row.Bars.Any(bar => Since(figures, bar.To) > across.To + 1e-6);

    private static List<(Action<Sheet, SKRect> Draw, string Words)> Entries(PiecesFigures figures, Scale across)
    {
        List<PieceBar> seen = [.. figures.Rows.SelectMany(row => row.Bars).Where(bar => IsSeen(figures, bar, across))];
        List<(Action<Sheet, SKRect> Draw, string Words)> entries = [.. PieceBars.All
            .Where(one => seen.Any(bar => bar.Spell == one.Spell))
            .Select(one => (
                (Action<Sheet, SKRect>)((sheet, box) => PieceBars.Draw(sheet, box, one.Spell)), one.Words))];
        if (figures.Rows.Any(row => IsBefore(figures, row, across) || IsAfter(figures, row, across)))
        {
            entries.Add((
                (sheet, box) => sheet.Arrow(new SKPoint(box.MidX - 9, box.MidY), Gutter - 9, 11), "goes on further"));
        }

        return entries;
    }
}
