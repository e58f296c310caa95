using System.Globalization;
using SkiaSharp;

namespace StudioBot.Chat.Pictures;

/// <summary>The picture of a recipe: its parts as one bar, and each in words below it. Numbers bind the two.</summary>
internal static class RecipePicture
{
    /// <summary>The most parts that can be read off a phone.</summary>
    public const int MostRows = 14;

    private const float Edge = Sheet.Width - Sheet.Margin;
    private const float NumbersTop = 160;
    private const float BarTop = 204;
    private const float BarBottom = 324;
    private const float RowsTop = 350;
    private const float LineHeight = 46;
    private const float UsualRow = 58;
    private const float MostRow = 90;
    private const float LeastHeight = 720;
    private const float Bottom = 30;
    private const float SampleLeft = Sheet.Margin + 70;
    private const float NameLeft = SampleLeft + 84;
    private const float AmountLeft = 800;
    private const float ShareLeft = 1040;

    private const int Patterns = 5;

    private static readonly SKColor Pale = new(0xEC, 0xEC, 0xEC);
    private static readonly SKColor Dark = new(0x8C, 0x8C, 0x8C);

    /// <summary>The bytes of the picture.</summary>
    public static byte[] Png(RecipeFigures figures)
    {
        using var sheet = Drawn(figures);
        return sheet.Png();
    }

    /// <summary>The picture as drawn, to look into; to be disposed of.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It has no part.</exception>
    public static Sheet Drawn(RecipeFigures figures)
    {
        ArgumentOutOfRangeException.ThrowIfZero(figures.Parts.Count, nameof(figures));
        List<RecipeShare> shown = [.. figures.Parts.Take(MostRows)];
        var more = figures.Parts.Count - shown.Count;
        var under = (more > 0 ? LineHeight : 0) + Bottom;
        var height = Math.Clamp((LeastHeight - RowsTop - under) / shown.Count, UsualRow, MostRow);
        var end = RowsTop + height * shown.Count;
        var sheet = new Sheet((int)Math.Ceiling(Math.Max(LeastHeight, end + under)));
        sheet.Write(figures.Title, new SKRect(Sheet.Margin, 30, Edge, 98), Lettering.Title);
        sheet.Write(figures.Line, new SKRect(Sheet.Margin, 104, Edge, 150), Lettering.Plain, ink: Ink.Quiet);
        Bar(sheet, figures.Parts);
        for (var at = 0; at < shown.Count; at++)
        {
            var top = RowsTop + at * height;
            Row(sheet, shown[at], at, new SKRect(Sheet.Margin, top, Edge, top + height));
        }

        if (more > 0)
        {
            sheet.Write(
                $"and {more} more", new SKRect(NameLeft, end, Edge, end + LineHeight), Lettering.Strong);
        }

        return sheet;
    }

    private static void Bar(Sheet sheet, IReadOnlyList<RecipeShare> parts)
    {
        var left = (float)Sheet.Margin;
        for (var at = 0; at < parts.Count; at++)
        {
            var width = (float)(parts[at].Share ?? 0) * (Edge - Sheet.Margin);
            if (width <= 0)
            {
                continue;
            }

            var box = new SKRect(left, BarTop, left + width, BarBottom);
            Piece(sheet, box, at);
            var number = Number(at);
            if (at < MostRows && Lettering.Strong.WidthOf(number) + 8 <= width)
            {
                sheet.Write(number, box with { Top = NumbersTop, Bottom = BarTop }, Lettering.Strong, Side.Middle);
            }

            left += width;
        }
    }

    private static void Row(Sheet sheet, RecipeShare part, int at, SKRect box)
    {
        sheet.Write(Number(at), box with { Right = SampleLeft - 8 }, Lettering.Strong);
        if (part.Share is > 0)
        {
            Piece(sheet, new SKRect(SampleLeft, box.MidY - 18, SampleLeft + 60, box.MidY + 18), at);
        }

        sheet.Write(part.Name, box with { Left = NameLeft, Right = AmountLeft - 16 }, Lettering.Plain);
        sheet.Write(part.Amount, box with { Left = AmountLeft, Right = ShareLeft - 16 }, Lettering.Plain, Side.Right);
        var share = part.Share switch
        {
            null => "on top",
            < 0.01 => "under 1 %",
            { } known => Replies.Show.Share(known),
        };
        sheet.Write(share, box with { Left = ShareLeft }, Lettering.Strong, Side.Right);
    }

    // Patterns without a colour: a part named white that is drawn blue would be taken for another.
    private static void Piece(Sheet sheet, SKRect box, int at)
    {
        switch (at % Patterns)
        {
            case 0:
                sheet.Fill(box, Pale);
                break;
            case 1:
                sheet.Hatch(box, Ink.Paper, Dark);
                break;
            case 2:
                sheet.Dots(box, Ink.Paper, Ink.Words);
                break;
            case 3:
                sheet.Fill(box, Dark);
                break;
            default:
                sheet.Uprights(box, Ink.Paper, Dark);
                break;
        }

        sheet.Outline(box);
    }

    private static string Number(int at) => (at + 1).ToString(CultureInfo.InvariantCulture);
}
