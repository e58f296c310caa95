using SkiaSharp;

namespace StudioBot.Chat.Pictures;

/// <summary>How words are set.</summary>
/// <param name="Size">The size of the letters in pixels.</param>
/// <param name="IsBold">Whether they are bold.</param>
internal sealed record Lettering(float Size, bool IsBold = false)
{
    /// <summary>The smallest that is set: its capitals are 22 px high, and 7 points on a phone that shows the picture
    /// 400 points wide.</summary>
    public const float Smallest = 31;

    /// <summary>What a picture is about.</summary>
    public static readonly Lettering Title = new(48, IsBold: true);

    /// <summary>A part of a picture.</summary>
    public static readonly Lettering Strong = new(Smallest, IsBold: true);

    /// <summary>All else.</summary>
    public static readonly Lettering Plain = new(Smallest);

    /// <summary>The height of a capital, in pixels.</summary>
    public float CapHeight
    {
        get
        {
            using var font = Font();
            return font.Metrics.CapHeight;
        }
    }

    /// <summary>The height of a line, from its highest letter to its lowest, in pixels.</summary>
    public float LineHeight
    {
        get
        {
            using var font = Font();
            return font.Metrics.Descent - font.Metrics.Ascent;
        }
    }

    /// <summary>How far words reach, in pixels.</summary>
    public float WidthOf(string words)
    {
        using var font = Font();
        return font.MeasureText(words);
    }

    /// <summary>A font to draw with, to be disposed of.</summary>
    public SKFont Font() => new(IsBold ? Typefaces.Bold : Typefaces.Regular, Size)
    {
        Edging = SKFontEdging.Antialias,
        Hinting = SKFontHinting.None,
        Subpixel = false,
    };
}
