using StudioBot.Chat.Asking;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Flow;
using StudioBot.Craft.Practice;
using StudioBot.Records.Recipes;

namespace StudioBot.Chat.Learning;

/// <summary>What this studio's readings of its batches tell of how its mixtures thin.</summary>
internal sealed class StudioFlow
{
    // Older ones were other bases and other hands (common practice).
    private const int MostReadings = 80;

    // Of less nobody would see a difference.
    private const double LeastThinned = 0.001;

    private readonly Dictionary<int, Batch> _batches;
    private readonly BatchContents _contents;
    private readonly IReadOnlyList<BatchFlow> _flows;
    private readonly List<BatchFlow> _known;
    private readonly List<MixtureReading> _readings;
    private readonly Studio _studio;

    private StudioFlow(Studio studio, int? asked)
    {
        _studio = studio;
        var flows = _flows = studio.View.Batches.Flows(MostReadings);
        var numbers = flows.Select(one => one.Batch).ToHashSet();
        if (asked is { } number)
        {
            numbers.Add(number);
        }

        _batches = studio.View.Batches.All().Where(batch => numbers.Contains(batch.Number))
            .ToDictionary(batch => batch.Number);
        _contents = new BatchContents(_batches.Values, studio.View);
        List<(BatchFlow Flow, IReadOnlyDictionary<string, double> Holds)> known = [.. flows
            .Select(flow => (flow, Holds: _contents.At(_batches[flow.Batch], flow.ActId)))
            .Where(one => one.Holds is not null)
            .Select(one => (one.flow, one.Holds!))];
        _known = [.. known.Select(one => one.Flow)];
        _readings = [.. known.Select(one => Told(one.Flow.Recipe, one.Flow.Batch, one.Holds, one.Flow.Reading))];
        Learnt = OwnFlow.From(_readings);
    }

    /// <summary>What is learnt from them.</summary>
    public OwnFlow Learnt { get; }

    /// <summary>When the first of the readings it rests on was taken; none where there are none.</summary>
    public DateTimeOffset? Since => Used().FirstOrDefault()?.At;

    /// <summary>As the records stand now.</summary>
    /// <param name="studio">The records.</param>
    /// <param name="asked">A batch that is asked about, read or not.</param>
    public static StudioFlow Of(Studio studio, int? asked = null) => new(studio, asked);

    /// <summary>How each batch read after something thinned it, against what the readings before said of it: in per
    /// cent of what came. Common practice goes by the batch's last reading alone. Slips are left out.</summary>
    public static IReadOnlyList<PastGuess> Past(Studio studio) => [.. Of(studio).Guesses()];

    private IEnumerable<PastGuess> Guesses()
    {
        for (var at = 1; at < _readings.Count; at++)
        {
            var one = _readings[at];
            if (one.Reading.Told is { } came
                && Before(at) is { } last
                && OwnFlow.From([_readings[last]]).Expect(one) is { } usual
                && OwnFlow.From(_readings[..at]).Expect(one) is { } own)
            {
                double Share(double told) => 100 * Math.Exp(told - came);
                yield return new PastGuess(
                    $"batch {one.Batch}",
                    _known[at].At,
                    100,
                    Share(own.Middle),
                    Share(usual.Middle),
                    Share(own.Low),
                    Share(own.High));
            }
        }
    }

    // The batch's last reading of the same kind before this one, if it was thinned since; none where either is a slip.
    private int? Before(int at)
    {
        var one = _readings[at];
        var last = _readings[..at].FindLastIndex(earlier => earlier.Batch == one.Batch
            && earlier.Reading.Told is not null
            && earlier.Reading is FlowReading.OfTrace == one.Reading is FlowReading.OfTrace);
        return last >= 0 && !IsOff(last) && !IsOff(at)
            && one.Thinners.Values.Sum() - _readings[last].Thinners.Values.Sum() > LeastThinned
            ? last
            : null;
    }

    private bool IsOff(int at) => Learnt.Slips.Contains(at) || Learnt.Mended.Contains(at);

    /// <summary>Whether it is learnt from the reading that this act told of a batch: false where it is left out as a
    /// slip; none where what is in the batch is not on record.</summary>
    public bool? IsLearntFrom(int batch, long act)
    {
        var at = _known.FindIndex(one => one.Batch == batch && one.ActId == act);
        return at < 0 ? null : !Learnt.Slips.Contains(at);
    }

    /// <summary>Whether the reading that this act told of a batch counts as ten times what was read, or a tenth.
    /// </summary>
    public bool IsMended(int batch, long act) =>
        Learnt.Mended.Any(at => _known[at].Batch == batch && _known[at].ActId == act);

    /// <summary>The last reading of a batch, be it known what is in it or not, or else of its mixture; none where
    /// neither was ever read.</summary>
    public BatchFlow? Last(int batch) => _flows.LastOrDefault(one => one.Batch == batch)
        ?? _known.LastOrDefault(one => one.Recipe == _batches[batch].Recipe);

    /// <summary>A batch as it is now, with a reading that is wanted of it; none where what is in it is not on record.
    /// </summary>
    public MixtureReading? Now(int batch, FlowReading wanted) =>
        _contents.At(_batches[batch], long.MaxValue) is { } holds
            ? Told(_batches[batch].Recipe, batch, holds, wanted)
            : null;

    /// <summary>What thins a batch: of what is in it the one that the readings tell most of, else the usual thinner of
    /// the trade.</summary>
    public string ThinnerOf(MixtureReading batch) => batch.Thinners.Count > 0
        ? batch.Thinners.OrderByDescending(one => one.Value).MinBy(one => Learnt.Slope(one.Key).Deviation).Key
        : _studio.Practice.Materials.First(one => one.Kind == MaterialKind.Thinner).Name;

    /// <summary>Since when and by how many readings: your 6 readings since 3 Nov.</summary>
    public string Grounds(Turn turn) => Learnt.Used.Count == 1
        ? "your 1 reading"
        : $"your {Learnt.Used.Count} readings since {WallTime.Day(Since!.Value, turn, _studio)}";

    /// <summary>Which readings were left out, and which count as ten times what was read or a tenth: one of batch 9.
    /// Empty where none was.</summary>
    public string LeftOut => string.Join(' ', new[]
    {
        Named("Left out as slips", Learnt.Slips),
        Named("A digit off, and mended", Learnt.Mended),
    }.OfType<string>());

    /// <summary>What the readings say of what thins a batch; none where they tell nothing of it yet.</summary>
    public string? SayOf(int batch, Turn turn)
    {
        var thinner = Last(batch) is { } last && Now(batch, last.Reading) is { } now ? ThinnerOf(now) : null;
        return thinner is not null && Learnt.Tells(thinner) ? Says(thinner, turn) : null;
    }

    /// <summary>1 % more thinner takes 6 % off, by your 6 readings since 3 Nov (common practice 5 %).</summary>
    public string Says(string thinner, Turn turn) => Learnt.Tells(thinner)
        ? $"1 % more {thinner} takes {Taken(Learnt.Slope(thinner))} off, by {Grounds(turn)} "
            + $"(common practice {Taken(ThinningSlope.Usual)})."
        : $"1 % more {thinner} takes {Taken(ThinningSlope.Usual)} off by common practice; your readings say where it "
            + "stands.";

    private static string Taken(ThinningSlope slope) => $"{Show.Number(slope.PerHundredth * 100)} %";

    private string? Named(string what, IReadOnlyList<int> readings) => readings.Count == 0
        ? null
        : $"{what}: of batch "
            + Sentences.And([.. readings.Select(at => _known[at].Batch).Distinct().Order()
                .Select(batch => Show.Number(batch, 0))])
            + ".";

    private IEnumerable<BatchFlow> Used() => _known.Where((_, at) => !Learnt.Slips.Contains(at));

    private MixtureReading Told(
        string recipe, int batch, IReadOnlyDictionary<string, double> holds, FlowReading reading)
    {
        var all = holds.Values.Sum();
        return new MixtureReading(
            recipe,
            batch,
            holds.Where(one => Thins(one.Key) && one.Value > 0).ToDictionary(one => one.Key, one => one.Value / all),
            reading);
    }

    private bool Thins(string material) =>
        _studio.Practice.Materials.FirstOrDefault(one => one.Name == material)?.Kind
            is MaterialKind.Thinner or MaterialKind.Additive or MaterialKind.Solvent;
}
