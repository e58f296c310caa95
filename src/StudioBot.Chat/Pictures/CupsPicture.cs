using SkiaSharp;

namespace StudioBot.Chat.Pictures;

/// <summary>The picture of a pour's cups, filled to scale, to be read propped up at the table where they are filled.
/// </summary>
internal static class CupsPicture
{
    /// <summary>The most cups that can be told apart and read.</summary>
    public const int MostCups = 11;

    private const float Edge = Sheet.Width - Sheet.Margin;
    private const int InARow = 6;
    private const float CupsTop = 204;
    private const float LineHeight = 44;
    private const float Bottom = 20;
    private const int MostNameLines = 3;

    private const float Largest = 60;
    private const float MostCup = 190;
    private const float Apart = 24;
    private const float Thick = 5;

    // A cup is never full to its rim, and of the least a line is to be seen.
    private const float Fullest = 0.92f;
    private const float LeastFill = 6;

    private static readonly SKColor Pale = new(0xEC, 0xEC, 0xEC);
    private static readonly SKColor PaleLines = new(0xA8, 0xA8, 0xA8);
    private static readonly SKColor PaleYellow = new(0xFB, 0xF6, 0xC0);

    /// <summary>The bytes of the picture.</summary>
    public static byte[] Png(CupsFigures figures)
    {
        using var sheet = Drawn(figures);
        return sheet.Png();
    }

    /// <summary>The picture as drawn, to look into; to be disposed of.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no cup, or more than fit.</exception>
    public static Sheet Drawn(CupsFigures figures)
    {
        var count = figures.Cups.Count;
        ArgumentOutOfRangeException.ThrowIfZero(count, nameof(figures));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, MostCups, nameof(figures));
        var rows = count > InARow ? 2 : 1;
        var columns = (count + rows - 1) / rows;
        var sheet = new Sheet(rows == 1 ? 960 : Sheet.Width);
        sheet.Write(figures.Title, new SKRect(Sheet.Margin, 30, Edge, 98), Lettering.Title);
        sheet.Write(figures.Line, new SKRect(Sheet.Margin, 104, Edge, 150), Lettering.Plain, ink: Ink.Quiet);
        sheet.Write(
            "%: how high it stands in a cup like that of the fullest.",
            new SKRect(Sheet.Margin, 150, Edge, 196),
            Lettering.Plain,
            ink: Ink.Quiet);

        var names = Wrapped(figures.Names);
        var band = (sheet.Height - CupsTop - names.Count * LineHeight - Bottom) / rows;
        var set = Sizes(figures, (float)(Edge - Sheet.Margin) / columns - Apart);
        for (var at = 0; at < count; at++)
        {
            // Fewer in the last row stand in its middle.
            var (row, column) = (at / columns, at % columns);
            var here = Math.Min(columns, count - row * columns);
            var width = (Edge - Sheet.Margin) / columns;
            var left = Sheet.Margin + (columns - here) * width / 2 + column * width;
            One(sheet, figures.Cups[at], SKRect.Create(left, CupsTop + row * band, width, band), set);
        }

        for (var at = 0; at < names.Count; at++)
        {
            var top = sheet.Height - Bottom - (names.Count - at) * LineHeight;
            sheet.Write(names[at], new SKRect(Sheet.Margin, top, Edge, top + LineHeight), Lettering.Plain);
        }

        return sheet;
    }

    // As large as the widest of them allows, all of a kind alike.
    private static (Lettering Name, Lettering Amount) Sizes(CupsFigures figures, float room) => (
        Fitting(figures.Cups.Select(cup => cup.Name), new Lettering(Largest), room),
        Fitting(figures.Cups.Select(cup => cup.Amount), new Lettering(Largest, IsBold: true), room));

    private static Lettering Fitting(IEnumerable<string> words, Lettering lettering, float room)
    {
        List<string> all = [.. words];
        while (lettering.Size > Lettering.Smallest && all.Any(one => lettering.WidthOf(one) > room))
        {
            lettering = lettering with { Size = Math.Max(Lettering.Smallest, lettering.Size - 1) };
        }

        return lettering;
    }

    private static void One(Sheet sheet, Cup cup, SKRect box, (Lettering Name, Lettering Amount) set)
    {
        var share = cup.Share < 0.01 ? "under 1 %" : Replies.Show.Share(cup.Share);
        var words = box.Bottom - 2 * set.Name.LineHeight - set.Amount.LineHeight - 8;
        var width = Math.Min(MostCup, box.Width - 2 * Apart);
        var outline = new SKRect(box.MidX - width / 2, box.Top + 16, box.MidX + width / 2, words - 8);
        for (var behind = Math.Min(cup.Count, 3) - 1; behind > 0; behind--)
        {
            var shade = SKRect.Create(
                outline.Left + behind * 14, outline.Top - behind * 8, outline.Width, outline.Height);
            sheet.Fill(shade, Ink.Paper, isOutlined: true);
        }

        var height = Math.Max(LeastFill, outline.Height * Fullest * (float)cup.Share);
        sheet.Fill(outline, Ink.Paper);
        Fill(sheet, outline with { Top = outline.Bottom - height }, cup.Kind);
        Walls(sheet, outline);

        var room = box with { Left = box.Left + Apart / 2, Right = box.Right - Apart / 2 };
        foreach (var (text, lettering) in new[] { (cup.Name, set.Name), (cup.Amount, set.Amount), (share, set.Name) })
        {
            var line = room with { Top = words, Bottom = words + lettering.LineHeight + 1 };
            sheet.Write(text, line, lettering, Side.Middle);
            words += lettering.LineHeight;
        }
    }

    // All colours alike: a cup named black that is drawn blue would be filled wrongly.
    private static void Fill(Sheet sheet, SKRect box, CupKind kind)
    {
        switch (kind)
        {
            case CupKind.Base:
                sheet.Hatch(box, Pale, PaleLines, apart: 22);
                break;
            case CupKind.Activator:
                sheet.Dots(box, PaleYellow, Ink.Words, apart: 26);
                break;
            default:
                sheet.Fill(box, Ink.Sky);
                break;
        }

        sheet.Line(new SKPoint(box.Left, box.Top), new SKPoint(box.Right, box.Top), Ink.Words, 3);
    }

    // Open above.
    private static void Walls(Sheet sheet, SKRect box)
    {
        var (left, right) = (new SKPoint(box.Left, box.Bottom), new SKPoint(box.Right, box.Bottom));
        sheet.Line(new SKPoint(box.Left, box.Top), left, Ink.Words, Thick);
        sheet.Line(new SKPoint(box.Right, box.Top), right, Ink.Words, Thick);
        sheet.Line(
            new SKPoint(left.X - Thick / 2, left.Y), new SKPoint(right.X + Thick / 2, right.Y), Ink.Words, Thick);
    }

    // In lines of the sheet's width; what is left over is counted.
    private static List<string> Wrapped(IReadOnlyList<string> names)
    {
        List<string> lines = [];
        var at = 0;
        while (at < names.Count)
        {
            var isLast = lines.Count == MostNameLines - 1;
            var count = 1;
            while (at + count < names.Count && Fits(Line(count + 1)))
            {
                count++;
            }

            lines.Add(Line(count));
            at += count;
            if (isLast)
            {
                break;
            }

            string Line(int taken) => string.Join(", ", names.Skip(at).Take(taken)) + (at + taken >= names.Count ? ""
                : isLast ? $" and {names.Count - at - taken} more" : ",");
        }

        return lines;
    }

    private static bool Fits(string words) => Lettering.Plain.WidthOf(words) <= Edge - Sheet.Margin - 2;
}
