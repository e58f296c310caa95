using SkiaSharp;

namespace StudioBot.Chat.Pictures;

/// <summary>How the bars of a piece look: told apart by pattern, outline and height, whatever colours are seen.
/// </summary>
internal static class PieceBars
{
    private const float Thick = 4;

    private static readonly SKColor PaleYellow = new(0xFB, 0xF6, 0xC0);
    private static readonly SKColor PaleOrange = new(0xFB, 0xF1, 0xDC);
    private static readonly SKColor PaleGreen = new(0xCF, 0xEE, 0xE3);

    /// <summary>What its bars mean, in the order of a piece's days.</summary>
    public static IReadOnlyList<(PieceSpell Spell, string Words)> All { get; } =
    [
        (PieceSpell.Unnoted, "days not noted"),
        (PieceSpell.Dried, "drying so far"),
        (PieceSpell.Likely, "to be dry, 8 times in 10"),
        (PieceSpell.Waits, "dry, waits for a coat"),
        (PieceSpell.Cures, "coat cures"),
        (PieceSpell.Window, "recoat window"),
        (PieceSpell.Failed, "coat failed, to be sanded"),
    ];

    /// <summary>Draws one.</summary>
    public static void Draw(Sheet sheet, SKRect box, PieceSpell spell)
    {
        switch (spell)
        {
            case PieceSpell.Dried:
                sheet.Fill(box, Ink.Sky, isOutlined: true);
                break;
            case PieceSpell.Likely:
                sheet.Hatch(box, PaleOrange, Ink.Orange);
                sheet.Outline(box);
                break;
            case PieceSpell.Waits:
                sheet.Dots(box, PaleYellow, Ink.Words);
                sheet.Outline(box);
                break;
            case PieceSpell.Cures:
                sheet.Uprights(box, PaleGreen, Ink.Green);
                sheet.Outline(box);
                break;
            case PieceSpell.Window:
                sheet.Fill(box, Ink.Vermilion);
                sheet.Outline(SKRect.Inflate(box, -Thick / 2, -Thick / 2), Thick);
                break;
            case PieceSpell.Failed:
                sheet.Fill(box, Ink.Paper);
                Crosses(sheet, box);
                sheet.Outline(box);
                break;
            default:
                sheet.Fill(box, Ink.Paper, isOutlined: true);
                break;
        }
    }

    private static void Crosses(Sheet sheet, SKRect box)
    {
        sheet.Canvas.Save();
        sheet.Canvas.ClipRect(box);
        for (var x = box.Left; x < box.Right; x += box.Height)
        {
            sheet.Line(new SKPoint(x, box.Top), new SKPoint(x + box.Height, box.Bottom), Ink.Words, 3);
            sheet.Line(new SKPoint(x, box.Bottom), new SKPoint(x + box.Height, box.Top), Ink.Words, 3);
        }

        sheet.Canvas.Restore();
    }
}
