using System.Globalization;
using QRCoder;
using SkiaSharp;

namespace StudioBot.Chat.Pictures;

/// <summary>One label: its code at the left, number, day and technique beside it. The same on paper and on a phone: all
/// its measures are shares of its height.</summary>
internal static class Label
{
    /// <summary>Its width over its height.</summary>
    public const float Shape = 1.8f;

    // Of the height.
    private const float Edge = 0.07f;
    private const float CodeSide = 1 - 2 * Edge;
    private const float NumberHeight = 0.34f;
    private const float LineHeight = 0.16f;

    // The height of a line of these letters over their size, and how small a long name is set at the most.
    private const float LineShare = 1.17f;
    private const float LeastShare = 0.72f;

    private const float Overlap = 1.01f;

    // A quarter of it may be spoilt by paint before it is read no more (level Q of ISO/IEC 18004, from memory).
    private const QRCodeGenerator.ECCLevel Spoilt = QRCodeGenerator.ECCLevel.Q;

    /// <summary>Draws it.</summary>
    /// <param name="canvas">On this.</param>
    /// <param name="box">In this box of its shape.</param>
    /// <param name="label">What it says.</param>
    /// <returns>Its words as they stand there.</returns>
    public static IReadOnlyList<DrawnText> Draw(SKCanvas canvas, SKRect box, LabelFigures label)
    {
        var height = box.Height;
        var (edge, side) = (Edge * height, CodeSide * height);
        var code = SKRect.Create(box.Left + edge, box.Top + edge, side, side);
        Code(canvas, code, label.Code);

        var left = code.Right + edge / 2;
        var room = new SKRect(left, code.Top, box.Right - edge, code.Bottom);
        var number = new SKRect(room.Left, room.Top, room.Right, room.Top + NumberHeight * height);
        var day = SKRect.Create(room.Left, number.Bottom + edge, room.Width, LineHeight * height);
        var technique = SKRect.Create(room.Left, day.Bottom + edge / 2, room.Width, LineHeight * height);
        return
        [
            Write(canvas, label.Number.ToString(CultureInfo.InvariantCulture), number, isBold: true),
            Write(canvas, label.Poured.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), day),
            Write(canvas, label.Technique, technique),
        ];
    }

    // Each row in runs, a little higher than it is, so that no white line shows between two rows.
    private static void Code(SKCanvas canvas, SKRect box, string text)
    {
        using var code = QRCodeGenerator.GenerateQrCode(text, Spoilt);
        using var black = new SKPaint { Color = SKColors.Black, IsAntialias = true };
        var rows = code.ModuleMatrix;
        var side = box.Width / rows.Count;
        for (var row = 0; row < rows.Count; row++)
        {
            for (var (from, to) = (0, 0); from < rows.Count; from = to)
            {
                var isBlack = rows[row][from];
                while (to < rows.Count && rows[row][to] == isBlack)
                {
                    to++;
                }

                if (isBlack)
                {
                    canvas.DrawRect(
                        SKRect.Create(box.Left + from * side, box.Top + row * side, (to - from) * side, side * Overlap),
                        black);
                }
            }
        }
    }

    // As high as its room, or as wide; a name that is still too long ends in points.
    private static DrawnText Write(SKCanvas canvas, string words, SKRect room, bool isBold = false)
    {
        var lettering = new Lettering(room.Height / LineShare, isBold);
        var smallest = lettering.Size * LeastShare;
        while (lettering.Size > smallest && lettering.WidthOf(words) > room.Width)
        {
            lettering = lettering with { Size = Math.Max(smallest, lettering.Size * 0.98f) };
        }

        var shown = Shortened.To(words, room.Width, lettering);
        using var font = lettering.Font();
        using var ink = new SKPaint { Color = SKColors.Black, IsAntialias = true };
        var top = room.MidY - lettering.LineHeight / 2;

        // As outlines: a file with letters of its own would carry all of them.
        using var outlines = font.GetTextPath(shown, new SKPoint(room.Left, top - font.Metrics.Ascent));
        canvas.DrawPath(outlines, ink);
        return new DrawnText(
            shown,
            SKRect.Create(room.Left, top, font.MeasureText(shown), lettering.LineHeight),
            room,
            lettering,
            ink.Color);
    }
}
