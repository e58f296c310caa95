using ScottPlot;
using SkiaSharp;

namespace StudioBot.Chat.Pictures;

/// <summary>The drawn part of a chart: lines, bands and marks in a box of a sheet. It has no words; those are written
/// on the sheet, around it.</summary>
/// <param name="area">Its box on the sheet.</param>
/// <param name="across">Its axis from left to right.</param>
/// <param name="up">Its axis from bottom to top.</param>
internal sealed class Chart(SKRect area, Scale across, Scale up) : IDisposable
{
    private readonly Plot plot = Empty(across, up);

    /// <summary>Pale lines behind all else, at these figures.</summary>
    public void Guides(IEnumerable<double> acrossAt, IEnumerable<double> upAt)
    {
        foreach (var at in acrossAt)
        {
            plot.Add.VerticalLine(at, 2, Colour(Ink.Guide));
        }

        foreach (var at in upAt)
        {
            plot.Add.HorizontalLine(at, 2, Colour(Ink.Guide));
        }
    }

    /// <summary>A span from left to right, hatched: what is only likely.</summary>
    public void Span(double from, double to, SKColor colour, SKColor lines)
    {
        var span = plot.Add.HorizontalSpan(from, to);
        span.FillStyle.Color = Colour(colour);
        span.FillStyle.Hatch = new ScottPlot.Hatches.Striped();
        span.FillStyle.HatchColor = Colour(lines);
        span.LineStyle.Width = 0;
    }

    /// <summary>A band between two curves.</summary>
    public void Band(double[] at, double[] low, double[] high, SKColor colour)
    {
        var band = plot.Add.FillY(at, low, high);
        band.FillStyle.Color = Colour(colour);
        band.LineStyle.Width = 0;
        band.MarkerStyle.IsVisible = false;
    }

    /// <summary>A curve.</summary>
    public void Curve(double[] at, double[] figures, SKColor colour)
    {
        var curve = plot.Add.ScatterLine(at, figures, Colour(colour));
        curve.LineStyle.Width = 5;
    }

    /// <summary>Marks with an outline.</summary>
    public void Marks(double[] at, double[] figures, SKColor colour)
    {
        var marks = plot.Add.ScatterPoints(at, figures, Colour(colour));
        marks.MarkerStyle.Shape = MarkerShape.FilledCircle;
        marks.MarkerStyle.Size = 22;
        marks.MarkerStyle.OutlineColor = Colour(Ink.Words);
        marks.MarkerStyle.OutlineWidth = 2;
    }

    /// <summary>A line from bottom to top; dashed where it is no edge.</summary>
    public void Upright(double at, SKColor colour, bool isDashed)
    {
        var line = plot.Add.VerticalLine(at, 4, Colour(colour));
        line.LineStyle.Pattern = isDashed ? LinePattern.Dotted : LinePattern.Solid;
    }

    /// <summary>A dashed line from left to right.</summary>
    public void Level(double at, SKColor colour)
    {
        var line = plot.Add.HorizontalLine(at, 4, Colour(colour));
        line.LineStyle.Pattern = LinePattern.Dashed;
    }

    /// <summary>Draws all of it; the words around it come after.</summary>
    public void DrawOn(Sheet sheet)
    {
        sheet.Canvas.Save();
        sheet.Canvas.ClipRect(area);
        plot.Render(sheet.Canvas, new PixelRect(area.Left, area.Right, area.Bottom, area.Top));
        sheet.Canvas.Restore();
        sheet.Outline(area);
    }

    /// <inheritdoc/>
    public void Dispose() => plot.Dispose();

    private static Plot Empty(Scale across, Scale up)
    {
        var plot = new Plot();
        plot.HideAxesAndGrid();
        plot.Layout.Frameless();
        plot.FigureBackground.Color = Colour(Ink.Paper);
        plot.DataBackground.Color = Colour(Ink.Paper);
        plot.Axes.SetLimits(across.From, across.To, up.From, up.To);
        return plot;
    }

    private static Color Colour(SKColor of) => new(of.Red, of.Green, of.Blue, of.Alpha);
}
