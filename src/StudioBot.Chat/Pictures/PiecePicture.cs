using System.Globalization;
using SkiaSharp;

namespace StudioBot.Chat.Pictures;

/// <summary>The picture of a drying piece: what it weighed and will weigh, or how likely it is dry, and when it is
/// ready.</summary>
internal static class PiecePicture
{
    private const int Height = 960;
    private const float DaysApart = 125;
    private const float FiguresApart = 80;

    // The likely day stands so far to the left that its words have room beside it.
    private const double LikelyWithin = 0.74;

    private static readonly SKRect Area = new(190, 272, Sheet.Width - Sheet.Margin, 760);
    private static readonly SKColor Pale = new(0xFB, 0xF1, 0xDC);
    private static readonly SKColor PaleLines = new(0xF0, 0xC4, 0x66);
    private static readonly SKColor PaleSky = new(0xC9, 0xE6, 0xF8);

    /// <summary>Whether there is something to see: two weighings, or odds.</summary>
    public static bool HasSomething(PieceFigures figures) => figures.Weighings.Count > 1 || figures.Odds.Count > 1;

    /// <summary>The bytes of the picture.</summary>
    public static byte[] Png(PieceFigures figures)
    {
        using var sheet = Drawn(figures);
        return sheet.Png();
    }

    /// <summary>The picture as drawn, to look into; to be disposed of.</summary>
    public static Sheet Drawn(PieceFigures figures)
    {
        var sheet = new Sheet(Height);
        var across = Across(figures);
        if (figures.Weighings.Count > 1)
        {
            Weighed(sheet, figures, across);
        }
        else
        {
            Likely(sheet, figures, across);
        }

        Head(sheet, figures);
        Days(sheet, figures, across);
        return sheet;
    }

    private static void Head(Sheet sheet, PieceFigures figures)
    {
        const float right = Sheet.Width - Sheet.Margin;
        sheet.Write(figures.Title, new SKRect(Sheet.Margin, 30, right, 98), Lettering.Title);
        for (var row = 0; row < figures.Lines.Count; row++)
        {
            var top = 104 + row * 46;
            sheet.Write(
                figures.Lines[row], new SKRect(Sheet.Margin, top, right, top + 44), Lettering.Plain, ink: Ink.Quiet);
        }
    }

    // Days since the pour, as far as anything is to be seen and the words beside the likely day reach.
    private static Scale Across(PieceFigures figures)
    {
        var last = figures.Weighings.Select(one => one.At).Append(figures.Now).Max();
        var to = Since(figures, last);
        if (figures.Ready is { } ready)
        {
            to = Math.Max(to, Since(figures, ready.Latest));
            to = Math.Max(to * 1.04, Since(figures, ready.Likely) / LikelyWithin);
        }

        to = Math.Max(1, to * 1.02);
        return new Scale(to * -0.02, to, Area.Left, Area.Right);
    }

    private static void Weighed(Sheet sheet, PieceFigures figures, Scale across)
    {
        List<CurvePoint> curve = [.. figures.Curve.Where(point => Since(figures, point.At) <= across.To)];
        List<double> all =
        [
            .. figures.Weighings.Select(one => one.Mass.Grams),
            .. curve.Select(point => point.Mass.Grams),
            .. figures.DryMass is { } dry ? [dry.Grams] : Array.Empty<double>(),
        ];
        var room = Math.Max(1, all.Max() - all.Min()) * 0.1;
        var up = new Scale(all.Min() - room, all.Max() + room, Area.Bottom, Area.Top);
        List<double> grams = [.. up.Round(FiguresApart)];

        using var chart = new Chart(Area, across, up);
        chart.Guides(DayMarks(figures, across), grams);
        ReadyBand(chart, figures);
        if (curve.Count > 1)
        {
            double[] at = [.. curve.Select(point => Since(figures, point.At))];
            chart.Band(
                at, [.. curve.Select(point => point.Low.Grams)], [.. curve.Select(point => point.High.Grams)], PaleSky);
            chart.Curve(at, [.. curve.Select(point => point.Mass.Grams)], Ink.Blue);
        }

        if (figures.DryMass is { } level)
        {
            chart.Level(level.Grams, Ink.Vermilion);
        }

        Now(chart, figures);
        chart.Marks(
            [.. figures.Weighings.Select(one => Since(figures, one.At))],
            [.. figures.Weighings.Select(one => one.Mass.Grams)],
            Ink.Orange);
        chart.DrawOn(sheet);
        var decimals = grams.Count > 1 && grams[1] - grams[0] < 1 ? 1 : 0;
        foreach (var gram in grams)
        {
            Figure(sheet, up.Pixel(gram), gram.ToString("F" + decimals, CultureInfo.InvariantCulture) + " g");
        }

        Legend.Write(sheet, 838, [.. Entries(figures, curve.Count > 1)]);
    }

    private static IEnumerable<(Action<Sheet, SKRect> Draw, string Words)> Entries(PieceFigures figures, bool hasCurve)
    {
        yield return ((sheet, box) => sheet.Dot(new SKPoint(box.MidX, box.MidY), 11, Ink.Orange), "weighed");
        if (hasCurve)
        {
            yield return (
                (sheet, box) =>
                {
                    sheet.Fill(box, PaleSky);
                    sheet.Line(new SKPoint(box.Left, box.MidY), new SKPoint(box.Right, box.MidY), Ink.Blue, 5);
                },
                "its curve, and how sure");
        }

        if (figures.DryMass is { } dry)
        {
            yield return (
                (sheet, box) => sheet.Line(
                    new SKPoint(box.Left, box.MidY), new SKPoint(box.Right, box.MidY), Ink.Vermilion, 4, 14, 8),
                $"ready line, {Replies.Show.Mass(dry)}");
        }

        if (figures.Ready is not null)
        {
            yield return ReadyEntry;
        }
    }

    private static (Action<Sheet, SKRect> Draw, string Words) ReadyEntry =>
        ((sheet, box) => sheet.Hatch(box, Pale, PaleLines), "ready between, 8 in 10");

    private static void Likely(Sheet sheet, PieceFigures figures, Scale across)
    {
        var up = new Scale(0, 1, Area.Bottom, Area.Top);
        double[] shares = [0, 0.25, 0.5, 0.75, 1];
        using var chart = new Chart(Area, across, up);
        chart.Guides(DayMarks(figures, across), shares);
        ReadyBand(chart, figures);
        List<(DateTime At, double Share)> odds = [.. figures.Odds.Where(one => Since(figures, one.At) <= across.To)];
        chart.Curve(
            [.. odds.Select(one => Since(figures, one.At))], [.. odds.Select(one => one.Share)], Ink.Blue);
        Now(chart, figures);
        chart.DrawOn(sheet);
        foreach (var share in shares)
        {
            Figure(sheet, up.Pixel(share), Replies.Show.Share(share));
        }

        Legend.Write(sheet, 838,
        [
            ((on, box) => on.Line(new SKPoint(box.Left, box.MidY), new SKPoint(box.Right, box.MidY), Ink.Blue, 5),
                "how likely it is dry"),
            ReadyEntry,
        ]);
    }

    private static void ReadyBand(Chart chart, PieceFigures figures)
    {
        if (figures.Ready is { } ready)
        {
            chart.Span(Since(figures, ready.Earliest), Since(figures, ready.Latest), Pale, PaleLines);
            chart.Upright(Since(figures, ready.Likely), Ink.Vermilion, isDashed: false);
        }
    }

    private static void Now(Chart chart, PieceFigures figures) =>
        chart.Upright(Since(figures, figures.Now), Ink.Words, isDashed: true);

    // Now ends where the likely day begins, so that their words never meet.
    private static void Days(Sheet sheet, PieceFigures figures, Scale across)
    {
        const float top = 206;
        var now = across.Pixel(Since(figures, figures.Now));
        if (figures.Ready is { } ready)
        {
            var likely = across.Pixel(Since(figures, ready.Likely));
            sheet.Write(
                $"likely {ready.LikelyDay}",
                new SKRect(likely - 2, top, Sheet.Width - Sheet.Margin, Area.Top - 22),
                Lettering.Strong);
            sheet.Write("now", new SKRect(Sheet.Margin, top, now - 20, Area.Top - 22), Lettering.Strong, Side.Right);
        }
        else
        {
            sheet.Write("now", new SKRect(Sheet.Margin, top, now + 2, Area.Top - 22), Lettering.Strong, Side.Right);
        }

        foreach (var mark in DayMarks(figures, across))
        {
            var at = across.Pixel(mark);
            const float half = DaysApart / 2;
            if (at + half <= Sheet.Width)
            {
                sheet.Write(
                    Replies.Show.Day(DateOnly.FromDateTime(figures.Poured.AddDays(mark + 1e-6))),
                    new SKRect(at - half, Area.Bottom + 8, at + half, Area.Bottom + 54),
                    Lettering.Plain,
                    Side.Middle);
            }
        }
    }

    private static void Figure(Sheet sheet, float at, string words) => sheet.Write(
        words, new SKRect(Sheet.Margin - 10, at - 22, Area.Left - 14, at + 22), Lettering.Plain, Side.Right);

    // At midnight, so that a day lies between two lines.
    private static IEnumerable<double> DayMarks(PieceFigures figures, Scale across)
    {
        var toMidnight = (figures.Poured.Date - figures.Poured).TotalDays;
        var days = across with { From = across.From - toMidnight, To = across.To - toMidnight };
        return days.RoundDays(DaysApart).Select(day => day + toMidnight).Where(day => day >= 0);
    }

    private static double Since(PieceFigures figures, DateTime at) => (at - figures.Poured).TotalDays;
}
