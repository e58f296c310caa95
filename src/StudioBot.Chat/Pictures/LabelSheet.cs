using SkiaSharp;

namespace StudioBot.Chat.Pictures;

/// <summary>Labels to print and to cut out: a PDF of as many pages as it takes, or a picture of a few.</summary>
internal sealed class LabelSheet
{
    /// <summary>The most that a picture shows: each can still be read off a phone.</summary>
    public const int MostInPicture = 6;

    // A point is the 72nd part of an inch (ISO 32000), an inch 25.4 mm.
    private const float Point = 72f / 25.4f;

    // What printers leave white, in millimetres (common practice).
    private const float Margin = 10;

    private const int Columns = 3;

    private readonly float width;
    private readonly float height;

    private LabelSheet(float width, float height) => (this.width, this.height) = (width, height);

    /// <summary>210 mm × 297 mm (ISO 216).</summary>
    public static LabelSheet A4 { get; } = new(210, 297);

    /// <summary>8.5 in × 11 in (ANSI/ASME Y14.1, size A).</summary>
    public static LabelSheet Letter { get; } = new(215.9f, 279.4f);

    /// <summary>The size of a label, in millimetres.</summary>
    public SKSize Label => new(
        (width - 2 * Margin) / Columns, (width - 2 * Margin) / Columns / Pictures.Label.Shape);

    /// <summary>How many a page holds.</summary>
    public int OnPage => Columns * Rows;

    private int Rows => (int)((height - 2 * Margin) / Label.Height);

    /// <summary>The labels as PDF, in rows from the top, with lines to cut along.</summary>
    public byte[] Pdf(IReadOnlyList<LabelFigures> labels)
    {
        using var file = new MemoryStream();
        using (var document = SKDocument.CreatePdf(file))
        {
            foreach (var page in labels.Chunk(OnPage))
            {
                var canvas = document.BeginPage(width * Point, height * Point);
                canvas.Scale(Point);
                for (var at = 0; at < page.Length; at++)
                {
                    Place(canvas, page[at], at);
                }

                document.EndPage();
            }

            document.Close();
        }

        return file.ToArray();
    }

    /// <summary>A few labels as a picture, one below the other where there is one, else two a row.</summary>
    /// <exception cref="ArgumentOutOfRangeException">None, or more than <see cref="MostInPicture"/>.</exception>
    public static byte[] Png(IReadOnlyList<LabelFigures> labels)
    {
        using var sheet = Drawn(labels);
        return sheet.Png();
    }

    /// <summary>The picture before it is written.</summary>
    /// <inheritdoc cref="Png"/>
    public static Sheet Drawn(IReadOnlyList<LabelFigures> labels)
    {
        ArgumentOutOfRangeException.ThrowIfZero(labels.Count);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(labels.Count, MostInPicture);
        var columns = labels.Count == 1 ? 1 : 2;
        var wide = (float)Sheet.Width / columns;
        var high = wide / Pictures.Label.Shape;
        var sheet = new Sheet((int)Math.Ceiling((labels.Count + columns - 1) / columns * high));
        for (var at = 0; at < labels.Count; at++)
        {
            sheet.Wrote(Pictures.Label.Draw(
                sheet.Canvas, SKRect.Create(at % columns * wide, at / columns * high, wide, high), labels[at]));
        }

        return sheet;
    }

    private void Place(SKCanvas canvas, LabelFigures label, int at)
    {
        var box = SKRect.Create(
            Margin + at % Columns * Label.Width, Margin + at / Columns * Label.Height, Label.Width, Label.Height);
        using var dashes = SKPathEffect.CreateDash([0.5f, 1.5f], 0);
        using var cut = new SKPaint { Color = Ink.Quiet, IsStroke = true, StrokeWidth = 0.1f, PathEffect = dashes };
        canvas.DrawRect(box, cut);
        Pictures.Label.Draw(canvas, box, label);
    }
}
