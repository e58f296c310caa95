using SkiaSharp;

namespace StudioBot.Chat.Pictures;

/// <summary>What the shapes of a picture mean: a sample of each, and its words.</summary>
internal static class Legend
{
    /// <summary>The height of a row of it.</summary>
    public const float RowHeight = 50;

    private const float SampleWidth = 60;
    private const float Gap = 14;
    private const float Apart = 36;

    /// <summary>Writes it from a line on downwards, as many rows as it takes.</summary>
    /// <param name="sheet">On which sheet.</param>
    /// <param name="top">From here.</param>
    /// <param name="entries">How a sample is drawn into its box, and its words.</param>
    public static void Write(Sheet sheet, float top, IReadOnlyList<(Action<Sheet, SKRect> Draw, string Words)> entries)
    {
        var left = (float)Sheet.Margin;
        foreach (var (draw, words) in entries)
        {
            var width = Lettering.Plain.WidthOf(words) + 1;
            if (left > Sheet.Margin && left + SampleWidth + Gap + width > Sheet.Width - Sheet.Margin)
            {
                (left, top) = (Sheet.Margin, top + RowHeight);
            }

            draw(sheet, new SKRect(left, top + 10, left + SampleWidth, top + RowHeight - 10));
            left += SampleWidth + Gap;
            var right = Math.Min(left + width, Sheet.Width - Sheet.Margin);
            sheet.Write(words, new SKRect(left, top, right, top + RowHeight), Lettering.Plain);
            left = right + Apart;
        }
    }
}
