using SkiaSharp;
using StudioBot.Chat.Pictures;

namespace StudioBot.Chat.Tests.Pictures;

/// <summary>What must hold of every picture, whatever it shows.</summary>
internal static class Legible
{
    private const int MostBytes = 200_000;

    /// <summary>Looks at the pixels and at every word of a picture.</summary>
    public static void Check(Sheet sheet)
    {
        var png = sheet.Png();
        Assert.InRange(png.Length, 1000, MostBytes);
        using var pixels = SKBitmap.Decode(png);
        Assert.Equal(Sheet.Width, pixels.Width);
        Assert.InRange(pixels.Height, 720, 1280);
        Assert.Equal(byte.MaxValue, pixels.GetPixel(0, 0).Alpha);

        Assert.NotEmpty(sheet.Texts);
        Assert.All(sheet.Texts, text =>
        {
            // Capitals at least 22 pixels high: a line of them is higher still.
            Assert.True(text.Lettering.CapHeight >= 22, $"“{text.Words}” is too small.");
            Assert.True(Holds(text.Within, text.Box), $"“{text.Words}” leaves its room.");
            Assert.True(Holds(new SKRect(0, 0, Sheet.Width, pixels.Height), text.Box), $"“{text.Words}” leaves the picture.");
            Assert.True(Contrast(text.Ink, Ground(pixels, text)) >= 4.5, $"“{text.Words}” is too pale.");
        });
        foreach (var (one, at) in sheet.Texts.Select((text, at) => (text, at)))
        {
            Assert.All(sheet.Texts.Skip(at + 1), other => Assert.False(
                SKRect.Intersect(one.Box, other.Box) is { Width: > 0.5f, Height: > 0.5f },
                $"“{one.Words}” and “{other.Words}” lie over each other."));
        }
    }

    /// <summary>The contrast of two colours, 1 to 21, as the Web Content Accessibility Guidelines 2.1 define it
    /// (relative luminance and contrast ratio; from memory).</summary>
    public static double Contrast(SKColor one, SKColor other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(SKColor colour) =>
        0.2126 * Linear(colour.Red) + 0.7152 * Linear(colour.Green) + 0.0722 * Linear(colour.Blue);

    private static double Linear(byte part) => part / 255.0 is var share && share <= 0.03928
        ? share / 12.92
        : Math.Pow((share + 0.055) / 1.055, 2.4);

    // Of the colours under and around the letters the one that is worst for them; letters and their soft edges are left out.
    private static SKColor Ground(SKBitmap pixels, DrawnText text)
    {
        var counts = new Dictionary<SKColor, int>();
        var (left, right) = ((int)Math.Max(0, text.Box.Left - 1), (int)Math.Min(pixels.Width - 1, text.Box.Right + 1));
        for (var y = (int)Math.Max(0, text.Box.Top); y < Math.Min(pixels.Height, text.Box.Bottom); y++)
        {
            for (var x = left; x <= right; x++)
            {
                counts[pixels.GetPixel(x, y)] = counts.GetValueOrDefault(pixels.GetPixel(x, y)) + 1;
            }
        }

        var all = counts.Values.Sum();
        return counts.Where(pair => pair.Key != text.Ink && pair.Value > all * 0.06)
            .Select(pair => pair.Key)
            .DefaultIfEmpty(counts.MaxBy(pair => pair.Value).Key)
            .MinBy(colour => Contrast(text.Ink, colour));
    }

    private static bool Holds(SKRect room, SKRect box) => box.Left >= room.Left - 0.5f && box.Right <= room.Right + 0.5f
        && box.Top >= room.Top - 0.5f && box.Bottom <= room.Bottom + 0.5f;
}
