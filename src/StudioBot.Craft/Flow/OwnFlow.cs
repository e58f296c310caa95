using StudioBot.Craft.Units;

namespace StudioBot.Craft.Flow;

/// <summary>What a studio's own readings of its batches tell: how its liquids thin, and how warmth does.</summary>
/// <remarks>
/// ln ν = a + s·φ + B·(1/T − 1/T_ref), with one a for each mixture (and one for its traces, which go by seconds: a
/// trail levels in a time proportional to viscosity, from memory), one s for each thinner, one B for the studio, and
/// each batch off by a little. All are normal beforehand, so that the answer is closed: a is free, s is <see
/// cref="ThinningSlope.Usual"/>, B that of water-borne paint, 2 to 3 % a degree, and a batch is off by a tenth (common
/// practice). From five readings on the scatter is believed as it is, the belief in the old one worth eight readings
/// (normal–inverse-gamma, from memory). A reading that the others leave more than four standard deviations and a factor
/// of three away is a slip; so are seconds that their cup can't tell. Where the others tell that reading so well that
/// a factor of ten is four standard deviations, and its seconds with a digit more or fewer would be no slip, a digit
/// slipped: then it counts as what was meant, as errors of a unit are set right in a survey (from memory).
/// </remarks>
public sealed class OwnFlow
{
    /// <summary>Where nobody read how warm a mixture was, it is taken for this.</summary>
    public static readonly Temperature Reference = Temperature.FromCelsius(20);

    // Of a reading, and of two batches that should be alike, as ln (common practice).
    private const double BatchSpread = 0.10;
    private static readonly double CupNoise = Math.Log(1.10);
    private static readonly double TraceNoise = Math.Log(1 + Trace.Spread);

    // A room that nobody read is at 20 °C, give or take 4 (common practice).
    private const double UnreadDegrees = 4;

    // What a degree more takes off a water-borne paint, 2 to 3 % (from memory).
    internal const double Fall = 0.025;
    private const double FallDeviation = 0.005;

    // Any mixture that pours, and any trace of one.
    private const double AnyLog = 4;
    private const double AnyLogDeviation = 4;

    private const int EnoughForScatter = 5;
    private const double WeightOfScatter = 8;
    private const double SlipDeviations = 4;
    private static readonly double SlipFactor = Math.Log(3);

    // What the readings leave of the width of a belief before they are said to tell anything.
    private const double Narrowed = 0.8;
    private const int EnoughBatches = 3;

    // A normal 80 % interval.
    private const double EightOfTen = 1.2816;

    private static readonly Dictionary<string, double> Unthinned = [];

    private readonly Dictionary<string, int> _thinners;
    private readonly Dictionary<(string, bool), int> _mixtures;
    private readonly Dictionary<int, int> _batches;
    private readonly LinearBelief _belief;
    private readonly double _scale;

    private readonly IReadOnlyList<double> _logs;       // of each that is used, as it is meant

    private OwnFlow(IReadOnlyList<MixtureReading> used, IReadOnlyList<double> logs)
    {
        (Used, _logs) = (used, logs);
        _thinners = Places(used.SelectMany(one => one.Thinners.Keys), 1);
        _mixtures = Places(used.Select(MixtureOf), 1 + _thinners.Count);
        _batches = Places(used.Select(one => one.Batch), 1 + _thinners.Count + _mixtures.Count);
        _belief = new LinearBelief(
            [Fall, .. Each(_thinners, ThinningSlope.Usual.Mean), .. Each(_mixtures, AnyLog), .. Each(_batches, 0)],
            [
                FallDeviation,
                .. Each(_thinners, ThinningSlope.Usual.Deviation),
                .. Each(_mixtures, AnyLogDeviation),
                .. Each(_batches, BatchSpread),
            ]);
        var strain = Enumerable.Range(0, used.Count).Sum(Take);
        _scale = used.Count < EnoughForScatter
            ? 1
            : Math.Sqrt((WeightOfScatter + strain) / (WeightOfScatter + used.Count));
    }

    /// <summary>The readings it rests on, in the order they came, each as it was read.</summary>
    public IReadOnlyList<MixtureReading> Used { get; }

    /// <summary>Which of the readings that came were left out as slips, by their place.</summary>
    public IReadOnlyList<int> Slips { get; private init; } = [];

    /// <summary>Which of the readings that came count as ten times what was read, or a tenth, by their place.</summary>
    public IReadOnlyList<int> Mended { get; private init; } = [];

    /// <summary>How much thinner a degree more makes it, as a fraction.</summary>
    public double FallPerDegree => _belief.Of(Unit(0)).Mean;

    /// <summary>Learns from these readings.</summary>
    /// <param name="readings">In the order they came.</param>
    public static OwnFlow From(IReadOnlyList<MixtureReading> readings)
    {
        var logs = new SortedDictionary<int, double>();     // of those that count, by their place
        for (var at = 0; at < readings.Count; at++)
        {
            if (readings[at].Reading.Told is { } told)
            {
                logs[at] = told;
            }
        }

        HashSet<int> mended = [];
        while (true)
        {
            List<int> places = [.. logs.Keys], slips = [.. Enumerable.Range(0, readings.Count).Except(places)];
            var learnt = new OwnFlow([.. places.Select(at => readings[at])], [.. logs.Values])
            {
                Slips = slips,
                Mended = [.. mended.Where(logs.ContainsKey).Order()],
            };
            if (learnt.Farthest() is { } far)
            {
                logs.Remove(places[far]);
            }
            else if (slips.Where(at => !mended.Contains(at))
                .Select(at => (At: at, Log: learnt.Meant(readings[at])))
                .FirstOrDefault(one => one.Log is not null) is { Log: { } meant } digit)
            {
                // One that is too far off all the same is left out, and not tried again.
                mended.Add(digit.At);
                logs[digit.At] = meant;
            }
            else
            {
                return learnt;
            }
        }
    }

    /// <summary>How a thinner thins here; common practice where no reading tells of it.</summary>
    public ThinningSlope Slope(string thinner)
    {
        if (!_thinners.TryGetValue(thinner, out var place))
        {
            return ThinningSlope.Usual;
        }

        var (mean, variance) = _belief.Of(Unit(place));
        return new ThinningSlope(mean, _scale * Math.Sqrt(variance));
    }

    /// <summary>Whether the readings narrow down how a thinner thins.</summary>
    public bool Tells(string thinner) => Slope(thinner).Deviation < Narrowed * ThinningSlope.Usual.Deviation;

    /// <summary>What a reading of such a batch would be, as ln of mm²/s or of a trace's seconds.</summary>
    /// <param name="batch">The batch and how it is thinned; of its reading the kind and the temperature count.</param>
    /// <returns>The middle, and the ends between which it lies four times of five; none where no reading of its mixture
    /// is of that kind.</returns>
    public (double Low, double Middle, double High)? Expect(MixtureReading batch)
    {
        if (!_mixtures.ContainsKey(MixtureOf(batch)))
        {
            return null;
        }

        var (middle, deviation) = Next(batch);
        var reach = EightOfTen * deviation;
        return (middle - reach, middle, middle + reach);
    }

    /// <summary>How much to put into a batch until it reads as wanted.</summary>
    /// <param name="batch">The batch and how it is thinned now, with the reading that is wanted.</param>
    /// <param name="there">How much of it is there.</param>
    /// <param name="thinner">What is put in, by its name; none: more of the mixture without what thins it.</param>
    /// <returns>Its range holds four times of five. Undetermined where no reading of its mixture is of that kind; wrong
    /// direction where it leads away from what is wanted; out of range where no amount reaches it, or a cup can't tell
    /// it.</returns>
    public Finding<ThinningStep> More(MixtureReading batch, Volume there, string? thinner)
    {
        if (batch.Reading is FlowReading.OfCup { Viscosity: Finding<KinematicViscosity>.None untold })
        {
            return None(untold.Kind, untold.Why, untold.Instead);
        }

        if (!_mixtures.ContainsKey(MixtureOf(batch)))
        {
            return None(NoFigure.Undetermined, "no such reading of this mixture is on record", "Read it, and tell me.");
        }

        var now = Row(batch);
        var (slope, variance) = Way(now, batch, thinner);
        var share = (Told(batch.Reading) - _belief.Of(now).Mean) / slope;
        if (slope == 0 || share < 0)
        {
            return None(NoFigure.WrongDirection, "that leads away from the target", "Add the other liquid.");
        }

        if (share >= 1)
        {
            return None(NoFigure.OutOfRange, "no amount of it reaches the target", "Take a stronger liquid.");
        }

        var reach = EightOfTen / Math.Abs(slope) * Math.Sqrt(VarianceOf(batch) + share * share * variance);
        var (more, low) = (Poured(there, share), Poured(there, Math.Max(0, share - reach)));
        return new Finding<ThinningStep>.Found(new ThinningStep(
            NextLiquid.SameAgain,
            more,
            low,
            share + reach < 1 ? Poured(there, share + reach) : null,
            low > default(Volume) ? low : more / 2));
    }

    /// <summary>How much more of a thinner to put into a cup of no known mixture until it reads as wanted.</summary>
    /// <param name="reads">What it reads, of one kind with what is wanted, and told by its cup.</param>
    /// <param name="wanted">What is wanted.</param>
    /// <param name="there">How much is in the cup.</param>
    /// <param name="thinner">What is put in, by its name.</param>
    /// <param name="already">Its share of what is in the cup, from 0 to below 1, where that is known.</param>
    /// <returns>The middle, and the ends between which it lies four times of five; none where that leads away from what
    /// is wanted, or no amount reaches it.</returns>
    public (Volume Low, Volume Middle, Volume? High)? More(
        FlowReading reads, FlowReading wanted, Volume there, string thinner, double already)
    {
        var (slope, left) = (Slope(thinner), 1 - already);
        var share = (Told(wanted) - Told(reads)) / (slope.Mean * left);
        if (slope.Mean >= 0 || share is < 0 or >= 1)
        {
            return null;
        }

        var noise = _scale * Noise(reads with { At = reads.At ?? Reference });
        var reach = EightOfTen / Math.Abs(slope.Mean * left)
            * Math.Sqrt(noise * noise + Math.Pow(share * left * slope.Deviation, 2));
        return (
            Poured(there, Math.Max(0, share - reach)),
            Poured(there, share),
            share + reach < 1 ? Poured(there, share + reach) : null);
    }

    /// <summary>The share of a thinner with which a mixture flows at this warmth as the studio likes it: as each of its
    /// batches was read last.</summary>
    /// <param name="mixture">Which mixture.</param>
    /// <param name="thinner">What thins it.</param>
    /// <param name="today">How warm it is.</param>
    /// <returns>The middle, and the ends between which it lies four times of five; none with fewer than three batches
    /// of it, while they tell nothing of the thinner, or where it came to less than 2 % or more than half.</returns>
    public (double Low, double Middle, double High)? ShareAt(string mixture, string thinner, Temperature today)
    {
        List<(MixtureReading One, double Log)> liked = [.. Used.Zip(_logs)
            .Where(one => one.First.Mixture == mixture)
            .GroupBy(one => one.First.Batch)
            .Select(batch => batch.Last())
            .GroupBy(one => MixtureOf(one.First))
            .OrderByDescending(kind => kind.Count())
            .FirstOrDefault() ?? Enumerable.Empty<(MixtureReading, double)>()];
        if (liked.Count < EnoughBatches || !Tells(thinner))
        {
            return null;
        }

        var row = Row(new MixtureReading(mixture, 0, Unthinned, liked[0].One.Reading with { At = today }));
        var slope = Slope(thinner).Mean;
        var share = (liked.Average(one => one.Log) - _belief.Of(row).Mean) / slope;
        row[_thinners[thinner]] = share;
        var reach = EightOfTen * _scale * Math.Sqrt(_belief.Of(row).Variance) / Math.Abs(slope);
        return share is > 0.02 and < 0.5 ? (Math.Max(0.01, share - reach), share, share + reach) : null;
    }

    // By how much ln(reading) goes from a share of nothing to nothing else of what is put in.
    private (double Slope, double Variance) Way(double[] now, MixtureReading batch, string? thinner)
    {
        var all = Row(batch with
        {
            Thinners = thinner is null ? Unthinned : new Dictionary<string, double> { [thinner] = 1 },
        });
        double[] way = [.. all.Zip(now, (full, here) => full - here)];
        var (slope, own) = _belief.Of(way);
        var variance = _scale * _scale * own;
        var usual = ThinningSlope.Usual;
        return thinner is null || _thinners.ContainsKey(thinner)
            ? (slope, variance)
            : (slope + usual.Mean, variance + usual.Deviation * usual.Deviation);
    }

    // How far it lies from what was expected of it, in squared deviations: about one where the beliefs are right.
    private double Take(int at)
    {
        var (row, read, noise) = (Row(Used[at]), _logs[at], Noise(Used[at].Reading));
        var (mean, variance) = _belief.Of(row);
        _belief.Add(row, 1 / (noise * noise), read / (noise * noise));
        return (read - mean) * (read - mean) / (variance + noise * noise);
    }

    // The reading that the others leave the farthest away, if that is too far to be one of them. Without a reading that
    // holds the share h of itself, it lies off by r/(1 − h), with the variance σ²/(1 − h).
    private int? Farthest()
    {
        (int? slip, var most) = (null, SlipDeviations);
        for (var at = 0; at < Used.Count; at++)
        {
            var (row, noise) = (Row(Used[at]), Noise(Used[at].Reading));
            var (mean, variance) = _belief.Of(row);
            var left = 1 - variance / (noise * noise);
            var off = Math.Abs(_logs[at] - mean) / left;
            var deviations = off * Math.Sqrt(left) / noise;
            if (off > SlipFactor && deviations > most)
            {
                (slip, most) = (at, deviations);
            }
        }

        return slip;
    }

    // What a reading of it would be, as a logarithm, and how far off it may lie; of a mixture that is known.
    private (double Middle, double Deviation) Next(MixtureReading batch)
    {
        var noise = _scale * Noise(batch.Reading);

        // Of what no reading tells, common practice does.
        var untold = batch.Thinners.Where(one => !_thinners.ContainsKey(one.Key)).Sum(one => one.Value);
        var (slope, spread) = (ThinningSlope.Usual.Mean, untold * ThinningSlope.Usual.Deviation);
        return (
            _belief.Of(Row(batch)).Mean + untold * slope,
            Math.Sqrt(VarianceOf(batch) + noise * noise + spread * spread));
    }

    // What a reading that was left out meant, if its digit slipped; none where it can't be said.
    private double? Meant(MixtureReading slip)
    {
        if (!_mixtures.ContainsKey(MixtureOf(slip)))
        {
            return null;
        }

        var (middle, deviation) = Next(slip);
        return SlipDeviations * deviation > FlowReading.Tenfold ? null : slip.Reading.Tenths()
            .Where(log => Math.Abs(log - middle) <= Math.Max(SlipFactor, SlipDeviations * deviation))
            .OrderBy(log => Math.Abs(log - middle))
            .Select(log => (double?)log)
            .FirstOrDefault();
    }

    private double VarianceOf(MixtureReading batch) => _scale * _scale
        * (_belief.Of(Row(batch)).Variance + (_batches.ContainsKey(batch.Batch) ? 0 : BatchSpread * BatchSpread));

    private double[] Row(MixtureReading one)
    {
        var row = Unit(0);
        row[0] = -Warmer(one.Reading.At ?? Reference);
        row[_mixtures[MixtureOf(one)]] = 1;
        foreach (var (thinner, share) in one.Thinners)
        {
            if (_thinners.TryGetValue(thinner, out var place))
            {
                row[place] = share;
            }
        }

        if (_batches.TryGetValue(one.Batch, out var batch))
        {
            row[batch] = 1;
        }

        return row;
    }

    private double[] Unit(int place)
    {
        var row = new double[1 + _thinners.Count + _mixtures.Count + _batches.Count];
        row[place] = 1;
        return row;
    }

    // Degrees above the reference, bent as 1/T bends them: B·(1/T − 1/T_ref) = −fall·this, with fall = B/T_ref².
    private static double Warmer(Temperature at) =>
        Reference.Kelvin * Reference.Kelvin * (1 / Reference.Kelvin - 1 / at.Kelvin);

    private static Volume Poured(Volume there, double share) => there * (share / (1 - share));

    private static (string, bool) MixtureOf(MixtureReading one) => (one.Mixture, one.Reading is FlowReading.OfTrace);

    private static double Told(FlowReading reading) => reading.Told
        ?? throw new InvalidOperationException("A reading that its cup can't tell was sorted out before.");

    private static double Noise(FlowReading reading)
    {
        var eye = reading is FlowReading.OfTrace ? TraceNoise : CupNoise;
        return reading.At is null ? Math.Sqrt(eye * eye + Math.Pow(Fall * UnreadDegrees, 2)) : eye;
    }

    private static Dictionary<T, int> Places<T>(IEnumerable<T> names, int from)
        where T : notnull =>
        names.Distinct().Select((name, at) => (Name: name, At: from + at)).ToDictionary(one => one.Name, one => one.At);

    private static IEnumerable<double> Each<T>(Dictionary<T, int> places, double value)
        where T : notnull => Enumerable.Repeat(value, places.Count);

    private static Finding<ThinningStep>.None None(NoFigure kind, string why, string instead) =>
        new(kind, why, instead);
}
