using StudioBot.Craft.Units;

namespace StudioBot.Craft.Flow;

/// <summary>How much more to add until a cup flows as wanted.</summary>
/// <remarks>
/// ln(reading) is taken as linear in the share added (log-linear mixing). Two readings give the line and, as the
/// other end
/// of the honest range, the line over millilitres; three or more give least squares and a range from their scatter,
/// never narrower than what a reading is good for. Cups go through their curves first; traces go in as they are.
/// </remarks>
public static class Thinning
{
    // Below such a change of ln(reading) two readings are the same: a cup's 10 %, two traces of ±30 % each.
    private const double CupChange = 0.1;
    private static readonly double TraceChange = Math.Sqrt(2) * Math.Log(1 + Trace.Spread);

    // What one reading is good for, as ln: ±10 % of a cup, ±30 % of a trace (common practice).
    private static readonly double CupSpread = Math.Log(1.10);
    private static readonly double TraceSpread = Math.Log(1 + Trace.Spread);

    private const double FarBeyond = 2;

    // The first try with one reading: a fifth of medium, one part in twenty of what thins (common practice).
    private const double FirstOfMedium = 0.20;
    private const double FirstOfThinner = 0.05;

    /// <summary>What to add next.</summary>
    /// <returns>
    /// Undetermined where the readings hardly differ, are of two kinds, or go the way that what was added can't make
    /// them
    /// go; wrong direction where it leads away from the target; out of range where no amount reaches it, or a cup can't
    /// be read there; a caution where the target lies far beyond the readings.
    /// </returns>
    /// <exception cref="ArgumentException">Fewer than two readings, or nothing in the cup.</exception>
    public static Finding<ThinningStep> Next(ThinningRun run)
    {
        if (run.Readings.Count < 2 || run.Have <= default(Volume))
        {
            throw new ArgumentException("Two readings of something in a cup.", nameof(run));
        }

        List<FlowReading> readings = [.. run.Readings.Select(reading => reading.Reading), run.Target];
        var traces = readings.OfType<FlowReading.OfTrace>().Count();
        if (traces > 0 && traces < readings.Count)
        {
            return None(
                NoFigure.Undetermined,
                "a trace and a cup's seconds can't be compared",
                "Give all readings and the target in one of them.");
        }

        List<Finding<double>> figures = [.. readings.Select(reading => reading.Log())];
        if (figures.OfType<Finding<double>.None>().FirstOrDefault() is { } unread)
        {
            return None(unread.Kind, unread.Why, unread.Instead);
        }

        double[] logs = [.. figures.Select(Figure)];
        var step = Next(run, logs[..^1], logs[^1], traces > 0);
        var edge = figures.OfType<Finding<double>.Cautioned>().FirstOrDefault()?.Caution
            ?? (Apart(readings) ? "the readings were taken more than 2 °C apart" : null);
        return step is Finding<ThinningStep>.Found found && edge is not null
            ? new Finding<ThinningStep>.Cautioned(found.Value, edge)
            : step;
    }

    /// <summary>What to try first where there is one reading and no answer yet to anything added.</summary>
    /// <returns>
    /// Undetermined where reading and target are of two kinds or within what a reading is good for; out of range where
    /// a cup can't be read. One reading does not say how much in all: no total is given.
    /// </returns>
    public static Finding<ThinningStart> Start(FlowReading reading, FlowReading target)
    {
        if (reading is FlowReading.OfTrace != target is FlowReading.OfTrace)
        {
            return new Finding<ThinningStart>.None(
                NoFigure.Undetermined, "a trace and a cup's seconds can't be compared", "Give both in one of them.");
        }

        Finding<double>[] figures = [reading.Log(), target.Log()];
        if (figures.OfType<Finding<double>.None>().FirstOrDefault() is { } unread)
        {
            return new Finding<ThinningStart>.None(unread.Kind, unread.Why, unread.Instead);
        }

        var change = Figure(figures[1]) - Figure(figures[0]);
        if (Math.Abs(change) < (reading is FlowReading.OfTrace ? TraceChange : CupChange))
        {
            return new Finding<ThinningStart>.None(
                NoFigure.Undetermined, "a reading is too rough to tell the two apart", "Pour a test tile as it is.");
        }

        return new Finding<ThinningStart>.Found(change > 0
            ? new ThinningStart(AddedLiquid.Medium, FirstOfMedium)
            : new ThinningStart(AddedLiquid.Thinner, FirstOfThinner));
    }

    private static Finding<ThinningStep> Next(ThinningRun run, double[] logs, double target, bool traces)
    {
        double[] added = [.. run.Readings.Select(reading => reading.AddedInAll.Millilitres)];
        var have = run.Have.Millilitres;
        double[] shares = [.. added.Select(volume => volume / (have + volume))];
        if (shares.Max() <= shares.Min())
        {
            return None(NoFigure.Undetermined, "nothing was added between the readings", "Add a little, read again.");
        }

        var curve = BlendCurve.Through(shares, logs, traces ? TraceSpread : CupSpread);
        if (Math.Abs(curve.Slope) * (shares.Max() - shares.Min()) < (traces ? TraceChange : CupChange))
        {
            return None(NoFigure.Undetermined, "the readings hardly differ", "Add more, stir, read again.");
        }

        if (GoesTheWrongWay(run.Added, curve.Slope > 0, traces))
        {
            return None(
                NoFigure.Undetermined,
                run.Added == AddedLiquid.Medium
                    ? "medium raises a trace, and here it fell"
                    : "a thinner lowers a reading, and here it rose",
                "Were the readings swapped, or the cup not stirred?");
        }

        var wanted = curve.ShareAt(target);
        return wanted switch
        {
            <= 0 => None(
                NoFigure.WrongDirection, "what was added leads away from the target", "Add the other liquid."),
            >= 1 => None(
                NoFigure.OutOfRange, "no amount of it reaches the target", "Take a stronger liquid."),
            _ => Step(
                new TwoLiquids(have, added[^1]),
                curve,
                BlendCurve.Through(added, logs, 0).ShareAt(target),
                wanted),
        };
    }

    private static Finding<ThinningStep> Step(TwoLiquids cup, BlendCurve curve, double byVolume, double wanted)
    {
        var passed = wanted < cup.Share;
        var more = cup.Step(wanted, passed);
        var (least, most) = curve.Residual > 0
            ? cup.Range(wanted, curve.SdOf(wanted), passed)
            : Ordered(more, cup.StepByVolume(byVolume, passed));

        var far = !passed && wanted > FarBeyond * cup.Share;
        var step = new ThinningStep(
            passed ? NextLiquid.FirstBack : NextLiquid.SameAgain,
            Volume.FromMillilitres(more),
            Volume.FromMillilitres(least),
            most is { } end ? Volume.FromMillilitres(end) : null,
            Volume.FromMillilitres(far || least <= 0 ? more / 2 : least));
        return far
            ? new Finding<ThinningStep>.Cautioned(
                step, "far beyond what was read: add half, stir, read again")
            : new Finding<ThinningStep>.Found(step);
    }

    private static (double Least, double? Most) Ordered(double one, double other) =>
        (Math.Min(one, other), Math.Max(one, other));

    private static bool GoesTheWrongWay(AddedLiquid added, bool rose, bool traces) => added switch
    {
        AddedLiquid.Medium => traces && !rose,
        AddedLiquid.Thinner => rose,
        _ => false,
    };

    private static double Figure(Finding<double> finding) => finding switch
    {
        Finding<double>.Found found => found.Value,
        Finding<double>.Cautioned cautioned => cautioned.Value,
        _ => throw new InvalidOperationException("A finding without a figure was sorted out before."),
    };

    private static bool Apart(List<FlowReading> readings)
    {
        double[] degrees = [.. readings.Select(reading => reading.At).OfType<Temperature>().Select(at => at.Celsius)];
        return degrees.Length > 0 && degrees.Max() - degrees.Min() > FlowReading.ComparableWithinDegrees;
    }

    private static Finding<ThinningStep>.None None(NoFigure kind, string why, string instead) =>
        new(kind, why, instead);
}
