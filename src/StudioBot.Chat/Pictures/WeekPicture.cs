using System.Globalization;
using SkiaSharp;

namespace StudioBot.Chat.Pictures;

/// <summary>The picture of a week: what was used against what is left. Millilitres, grams and pieces have no axis in
/// common, so a bar is as long as what is left lasts at that use, in weeks.</summary>
internal static class WeekPicture
{
    /// <summary>The most materials that can be read off a phone.</summary>
    public const int MostRows = 10;

    /// <summary>So many weeks the bars reach; more ends in an arrow.</summary>
    public const int MostWeeks = 8;

    private const float Edge = Sheet.Width - Sheet.Margin;
    private const float MarksTop = 150;
    private const float RowsTop = 196;
    private const float Below = 12;
    private const float Bottom = 26;
    private const float LineHeight = 44;
    private const float BarHeight = 28;
    private const float LeastHeight = 720;
    private const float UsualRow = 94;
    private const float NameRight = 640;
    private const float BarsRight = 960;
    private const float LeastBar = 6;
    private const int MostDaysInWords = 14;
    private const int WeeksOfAYear = 52;

    private static readonly Scale Across = new(0, MostWeeks, Sheet.Margin, BarsRight);
    private static readonly SKColor PaleOrange = new(0xFB, 0xF1, 0xDC);

    /// <summary>The bytes of the picture.</summary>
    public static byte[] Png(WeekFigures figures)
    {
        using var sheet = Drawn(figures);
        return sheet.Png();
    }

    /// <summary>The picture as drawn, to look into; to be disposed of.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no material, or more than fit.</exception>
    public static Sheet Drawn(WeekFigures figures)
    {
        var count = figures.Rows.Count;
        ArgumentOutOfRangeException.ThrowIfZero(count, nameof(figures));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, MostRows, nameof(figures));
        var entries = Entries(figures);
        var under = Below + (figures.More > 0 ? LineHeight : 0) + Legend.HeightOf(entries) + Bottom;
        var height = Math.Max(UsualRow, (LeastHeight - RowsTop - under) / count);
        var end = RowsTop + height * count;
        var sheet = new Sheet((int)Math.Ceiling(end + under));

        sheet.Write(figures.Title, new SKRect(Sheet.Margin, 30, Edge, 98), Lettering.Title);
        sheet.Write(
            "A bar: the weeks that what is left lasts at that use.",
            new SKRect(Sheet.Margin, 100, Edge, 146),
            Lettering.Plain,
            ink: Ink.Quiet);
        Marks(sheet);
        for (var at = 0; at < count; at++)
        {
            Row(sheet, figures.Rows[at], RowsTop + (at + 0.5f) * height);
        }

        var top = end + Below;
        if (figures.More > 0)
        {
            var words = $"and {figures.More} more";
            sheet.Write(words, new SKRect(Sheet.Margin, top, Edge, top + LineHeight), Lettering.Strong);
            top += LineHeight;
        }

        Legend.Write(sheet, top, entries);
        return sheet;
    }

    private static void Marks(Sheet sheet)
    {
        for (var week = 0; week <= MostWeeks; week++)
        {
            var at = Across.Pixel(week);
            var words = week.ToString(CultureInfo.InvariantCulture);
            var (left, side) = week == 0 ? (at, Side.Left) : (at - 50, Side.Middle);
            sheet.Write(words, new SKRect(left, MarksTop, at + 50, RowsTop - 4), Lettering.Plain, side);
        }

        sheet.Write("weeks", new SKRect(BarsRight + 60, MarksTop, Edge, RowsTop - 4), Lettering.Plain);
    }

    // Its words above its bar.
    private static void Row(Sheet sheet, WeekRow row, float middle)
    {
        var words = new SKRect(Sheet.Margin, middle - LineHeight + 4, Edge, middle + 4);
        var name = row.Low.Length > 0 ? Marked(row) : row.Name;
        sheet.Write(name, words with { Right = NameRight }, Lettering.Strong);
        var used = row.Used.Length > 0 ? $"{row.Used} used" : "none used";
        var left = row.Left.Length > 0 ? $"{row.Left} left" : "none left";
        sheet.Write($"{used}, {left}", words with { Left = NameRight + 20 }, Lettering.Plain, Side.Right);

        var box = new SKRect(Sheet.Margin, middle + 6, BarsRight, middle + 6 + BarHeight);
        for (var week = 0; week <= MostWeeks; week++)
        {
            var at = Across.Pixel(week);
            sheet.Line(new SKPoint(at, box.Top), new SKPoint(at, box.Bottom), Ink.Guide, 2);
        }

        if (row.Weeks is { } weeks)
        {
            var right = Across.Pixel(Math.Min(weeks, MostWeeks));
            Bar(sheet, box with { Right = Math.Max(right, box.Left + LeastBar) }, row.Low.Length > 0);
            if (weeks > MostWeeks)
            {
                sheet.Arrow(new SKPoint(box.Right + 34, box.MidY), -24, 15);
            }
        }

        sheet.Write(
            Lasts(row),
            new SKRect(BarsRight + 60, box.MidY - LineHeight / 2, Edge, box.MidY + LineHeight / 2),
            Lettering.Plain,
            ink: Ink.Quiet);
    }

    // A long name is shortened, the word that it is low never.
    private static string Marked(WeekRow row)
    {
        var mark = $": {row.Low}";
        var room = NameRight - Sheet.Margin - Lettering.Strong.WidthOf(mark) - 2;
        return Shortened.To(row.Name, room, Lettering.Strong) + mark;
    }

    private static string Lasts(WeekRow row) => row.Weeks switch
    {
        _ when row.Left.Length == 0 => "",
        null => "",
        > WeeksOfAYear => "over a year",
        { } weeks when weeks * 7 < MostDaysInWords => Sharing.ShelfNeed.Days(weeks * 7),
        { } weeks => $"{Replies.Show.Number(Math.Floor(weeks), 0)} weeks",
    };

    private static void Bar(Sheet sheet, SKRect box, bool isLow)
    {
        if (isLow)
        {
            sheet.Hatch(box, PaleOrange, Ink.Vermilion);
            sheet.Outline(box);
        }
        else
        {
            sheet.Fill(box, Ink.Sky, isOutlined: true);
        }
    }

    private static List<(Action<Sheet, SKRect> Draw, string Words)> Entries(WeekFigures figures)
    {
        List<(Action<Sheet, SKRect> Draw, string Words)> entries = [];
        if (figures.Rows.Any(row => row.Low.Length == 0))
        {
            entries.Add(((sheet, box) => Bar(sheet, box, isLow: false), "not low"));
        }

        if (figures.Rows.Any(row => row.Low.Length > 0))
        {
            entries.Add(((sheet, box) => Bar(sheet, box, isLow: true), "low"));
        }

        if (figures.Rows.Any(row => row.Weeks > MostWeeks))
        {
            entries.Add((
                (sheet, box) => sheet.Arrow(new SKPoint(box.MidX + 12, box.MidY), -24, 15),
                $"more than {MostWeeks} weeks"));
        }

        return entries;
    }
}
