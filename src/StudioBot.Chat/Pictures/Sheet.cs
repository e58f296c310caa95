using System.Text;
using SkiaSharp;

namespace StudioBot.Chat.Pictures;

/// <summary>A picture while it is drawn: 1280 pixels wide, on paper of its own. All words pass through here, so that
/// none leaves its room and each can be looked up afterwards.</summary>
internal sealed class Sheet : IDisposable
{
    /// <summary>The width of every picture: a chat service that makes pictures smaller leaves this as it is.</summary>
    public const int Width = 1280;

    /// <summary>What stays empty at every edge.</summary>
    public const int Margin = 40;

    // More than a line of the smallest letters holds.
    private const int MostLetters = 160;

    private const string NoLetter = "□";

    // The one filter for all rows: trying out which is best takes twice the time and saves a tenth of the file.
    private static readonly SKPngEncoderOptions Quick = new(SKPngEncoderFilterFlags.Up, 6);

    private readonly SKSurface surface;
    private readonly List<DrawnText> texts = [];

    /// <summary>An empty sheet.</summary>
    /// <param name="height">Its height in pixels, 200 to 1280.</param>
    /// <exception cref="ArgumentOutOfRangeException">Another height.</exception>
    public Sheet(int height)
    {
        Height = height is >= 200 and <= Width
            ? height
            : throw new ArgumentOutOfRangeException(nameof(height), height, "A picture is 200 to 1280 high.");
        surface = SKSurface.Create(new SKImageInfo(Width, height, SKColorType.Rgb888x, SKAlphaType.Opaque));
        Canvas.Clear(Ink.Paper);
    }

    /// <summary>In pixels.</summary>
    public int Height { get; }

    /// <summary>To draw shapes on.</summary>
    public SKCanvas Canvas => surface.Canvas;

    /// <summary>All words on it, in the order they were written.</summary>
    public IReadOnlyList<DrawnText> Texts => texts;

    /// <summary>A line of words in its room; what does not fit is set smaller, then shortened.</summary>
    /// <param name="words">What.</param>
    /// <param name="within">Its room, at least a line of the smallest letters high.</param>
    /// <param name="lettering">How, where there is room.</param>
    /// <param name="side">To which side.</param>
    /// <param name="ink">In which colour; none: that of words.</param>
    /// <exception cref="ArgumentException">Its room is lower than a line.</exception>
    public void Write(string words, SKRect within, Lettering lettering, Side side = Side.Left, SKColor? ink = null)
    {
        var shown = Drawable(words);
        if (shown.Length == 0)
        {
            return;
        }

        var set = Fitting(shown, within.Width, lettering);
        if (set.LineHeight > within.Height)
        {
            throw new ArgumentException($"No line of {set.Size} px fits into {within.Height} px.", nameof(within));
        }

        shown = Shortened.To(shown, within.Width, set);
        using var font = set.Font();
        using var paint = new SKPaint { Color = ink ?? Ink.Words, IsAntialias = true };
        var width = font.MeasureText(shown);
        var left = side switch
        {
            Side.Left => within.Left,
            Side.Middle => within.MidX - width / 2,
            _ => within.Right - width,
        };
        var top = within.MidY - set.LineHeight / 2;
        Canvas.DrawText(shown, left, top - font.Metrics.Ascent, font, paint);
        texts.Add(new DrawnText(
            shown, new SKRect(left, top, left + width, top + set.LineHeight), within, set, paint.Color));
    }

    /// <summary>Words that were drawn on its canvas, in its pixels.</summary>
    public void Wrote(IEnumerable<DrawnText> drawn) => texts.AddRange(drawn);

    /// <summary>A filled shape with an outline.</summary>
    public void Fill(SKRect box, SKColor colour, bool isOutlined = false)
    {
        using var fill = new SKPaint { Color = colour, IsAntialias = true };
        Canvas.DrawRect(box, fill);
        if (isOutlined)
        {
            Outline(box);
        }
    }

    /// <summary>The outline of a box.</summary>
    public void Outline(SKRect box, float width = 2)
    {
        using var line = new SKPaint { Color = Ink.Words, IsStroke = true, StrokeWidth = width, IsAntialias = true };
        Canvas.DrawRect(box, line);
    }

    /// <summary>A box under slanted lines: what tells it from its like where no colour is seen.</summary>
    public void Hatch(SKRect box, SKColor colour, SKColor lines, float apart = 16)
    {
        Fill(box, colour);
        using var line = new SKPaint { Color = lines, IsStroke = true, StrokeWidth = 3, IsAntialias = true };
        Canvas.Save();
        Canvas.ClipRect(box);
        for (var x = box.Left - box.Height; x < box.Right; x += apart)
        {
            Canvas.DrawLine(x, box.Bottom, x + box.Height, box.Top, line);
        }

        Canvas.Restore();
    }

    /// <summary>A box of dots, as many as it holds whole.</summary>
    public void Dots(SKRect box, SKColor colour, SKColor dots, float apart = 14)
    {
        Fill(box, colour);
        using var dot = new SKPaint { Color = dots, IsAntialias = true };
        var (columns, rows) = ((int)(box.Width / apart), (int)(box.Height / apart));
        var (left, top) = (box.MidX - (columns - 1) * apart / 2, box.MidY - (rows - 1) * apart / 2);
        for (var at = 0; at < columns * rows; at++)
        {
            Canvas.DrawCircle(left + at % columns * apart, top + at / columns * apart, apart / 6, dot);
        }
    }

    /// <summary>A filled arrowhead.</summary>
    /// <param name="tip">Where it points.</param>
    /// <param name="length">From its tip to its end, in pixels; below nothing where it points to the right.</param>
    /// <param name="half">Half of its height, in pixels.</param>
    public void Arrow(SKPoint tip, float length, float half)
    {
        using var path = new SKPath();
        path.MoveTo(tip);
        path.LineTo(tip.X + length, tip.Y - half);
        path.LineTo(tip.X + length, tip.Y + half);
        path.Close();
        using var fill = new SKPaint { Color = Ink.Words, IsAntialias = true };
        Canvas.DrawPath(path, fill);
    }

    /// <summary>A box of upright lines.</summary>
    public void Uprights(SKRect box, SKColor colour, SKColor lines, float apart = 10)
    {
        Fill(box, colour);
        for (var x = box.Left + apart; x < box.Right - 1; x += apart)
        {
            Line(new SKPoint(x, box.Top), new SKPoint(x, box.Bottom), lines, 3);
        }
    }

    /// <summary>A straight line.</summary>
    /// <param name="from">From here.</param>
    /// <param name="to">To here.</param>
    /// <param name="colour">In this colour.</param>
    /// <param name="width">As thick as this, in pixels.</param>
    /// <param name="dashes">Its strokes and gaps in pixels; none: whole.</param>
    public void Line(SKPoint from, SKPoint to, SKColor colour, float width, params float[] dashes)
    {
        using var effect = dashes.Length > 0 ? SKPathEffect.CreateDash(dashes, 0) : null;
        using var line = new SKPaint
        {
            Color = colour,
            IsStroke = true,
            StrokeWidth = width,
            IsAntialias = true,
            PathEffect = effect,
        };
        Canvas.DrawLine(from, to, line);
    }

    /// <summary>A round mark.</summary>
    public void Dot(SKPoint at, float radius, SKColor colour)
    {
        using var fill = new SKPaint { Color = colour, IsAntialias = true };
        using var line = new SKPaint { Color = Ink.Words, IsStroke = true, StrokeWidth = 2, IsAntialias = true };
        Canvas.DrawCircle(at, radius, fill);
        Canvas.DrawCircle(at, radius, line);
    }

    /// <summary>The bytes of the picture, the same for the same drawing.</summary>
    public byte[] Png()
    {
        using var pixels = surface.PeekPixels();
        using var data = pixels.Encode(Quick)
            ?? throw new InvalidOperationException("The picture can't be written as PNG.");
        return data.ToArray();
    }

    /// <inheritdoc/>
    public void Dispose() => surface.Dispose();

    // One line of letters that are there; what people typed may hold anything.
    private static string Drawable(string words)
    {
        var shown = new StringBuilder();
        foreach (var rune in words.EnumerateRunes().Take(MostLetters))
        {
            shown.Append(
                Rune.IsControl(rune) || Rune.IsWhiteSpace(rune) ? " "
                : Typefaces.Regular.ContainsGlyph(rune.Value) && Typefaces.Bold.ContainsGlyph(rune.Value)
                    ? rune.ToString()
                    : NoLetter);
        }

        return shown.ToString().Trim();
    }

    private static Lettering Fitting(string words, float width, Lettering lettering)
    {
        while (lettering.Size > Lettering.Smallest && lettering.WidthOf(words) > width)
        {
            lettering = lettering with { Size = Math.Max(Lettering.Smallest, lettering.Size - 1) };
        }

        return lettering;
    }
}
