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
        foreach (var ((draw, words), place) in entries.Zip(Places(entries)))
        {
            var (left, down) = (place.X, top + place.Y);
            draw(sheet, new SKRect(left, down + 10, left + SampleWidth, down + RowHeight - 10));
            var from = left + SampleWidth + Gap;
            sheet.Write(words, new SKRect(from, down, Right(from, words), down + RowHeight), Lettering.Plain);
        }
    }

    /// <summary>How high it is with all its rows.</summary>
    public static float HeightOf(IReadOnlyList<(Action<Sheet, SKRect> Draw, string Words)> entries) =>
        entries.Count == 0 ? 0 : Places(entries)[^1].Y + RowHeight;

    // Where each begins: from the left, and below the first row.
    private static List<SKPoint> Places(IReadOnlyList<(Action<Sheet, SKRect> Draw, string Words)> entries)
    {
        List<SKPoint> places = [];
        var (left, down) = ((float)Sheet.Margin, 0f);
        foreach (var (_, words) in entries)
        {
            var width = SampleWidth + Gap + Lettering.Plain.WidthOf(words) + 1;
            if (left > Sheet.Margin && left + width > Sheet.Width - Sheet.Margin)
            {
                (left, down) = (Sheet.Margin, down + RowHeight);
            }

            places.Add(new SKPoint(left, down));
            left = Right(left + SampleWidth + Gap, words) + Apart;
        }

        return places;
    }

    private static float Right(float from, string words) =>
        Math.Min(from + Lettering.Plain.WidthOf(words) + 1, Sheet.Width - Sheet.Margin);
}
