using StudioBot.Chat.Replies;
using StudioBot.Craft.Flow;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using StudioBot.Records.Pieces;
using StudioBot.Records.Rooms;

namespace StudioBot.Chat.Learning;

/// <summary>What pieces with a fault may share: how, with what, from which lots and batches and in what air they were
/// poured.</summary>
internal sealed class FaultThings
{
    // Where paint is said to dry badly (common practice).
    private const double DampPercent = 60;
    private const double ColdCelsius = 18;
    private const double WarmCelsius = 26;

    // A cup repeats within a tenth (common practice); a fifth is another batch.
    private const double Apart = 0.2;

    private static readonly TimeSpan Fresh = TimeSpan.FromHours(12);

    private readonly Dictionary<string, MaterialForm> _forms;
    private readonly Dictionary<int, IReadOnlyList<string>> _lots;
    private readonly Dictionary<int, FlowReading> _flows;
    private readonly Dictionary<string, double> _usual;
    private readonly List<RoomReading> _air;

    /// <summary>Of these pieces.</summary>
    /// <param name="pieces">At least one.</param>
    /// <param name="lines">What happened to them.</param>
    /// <param name="studio">The records.</param>
    public FaultThings(IReadOnlyList<Piece> pieces, IReadOnlyList<PieceLine> lines, Studio studio)
    {
        var view = studio.View;
        _forms = view.Materials.All().ToDictionary(one => one.Name, one => one.Form);
        var pours = lines.Where(line => line.What is PieceEvent.Poured)
            .ToLookup(line => line.Number, line => line.ActId);
        var drawn = view.Stock.HoldingOf(pours.SelectMany(one => one).Distinct()).Where(line => !line.Fills).ToList();
        var labels = view.Lots.Of(drawn.Select(line => line.LotId).Distinct())
            .Where(lot => lot.Label is not null)
            .ToDictionary(lot => lot.Id, lot => lot.Label!);
        var byAct = drawn.Where(line => labels.ContainsKey(line.LotId))
            .ToLookup(line => line.ActId, line => labels[line.LotId]);
        _lots = pieces.ToDictionary(
            piece => piece.Number,
            IReadOnlyList<string> (piece) => [.. pours[piece.Number].SelectMany(act => byAct[act]).Distinct()]);
        _flows = view.Batches.Flows(int.MaxValue).GroupBy(flow => flow.Batch)
            .ToDictionary(same => same.Key, same => same.Last().Reading);
        _usual = pieces.Where(piece => piece.Batch is { } batch && _flows.ContainsKey(batch))
            .Select(piece => _flows[piece.Batch!.Value])
            .GroupBy(Cup, reading => reading.Seconds.TotalSeconds)
            .ToDictionary(same => same.Key, same => same.Order().ElementAt(same.Count() / 2));
        var room = view.Rooms.All() is [var first, ..] ? first.Name : null;
        _air = [.. view.Rooms.Readings(pieces.Min(piece => piece.PouredAt) - Fresh).Where(one => one.Room == room)];
    }

    /// <summary>Of one of them, each as it follows its number in a sentence.</summary>
    public IEnumerable<string> Of(Piece piece) =>
    [
        .. PieceThings.Of(piece),
        .. Kinds(piece),
        .. _lots[piece.Number].Select(label => $"with lot {label}"),
        .. Air(piece),
        .. Flow(piece),
    ];

    private IEnumerable<string> Kinds(Piece piece)
    {
        var powders = piece.Parts.Count(part => _forms.GetValueOrDefault(part.Material) == MaterialForm.Powder);
        if (powders > 0)
        {
            yield return powders == piece.Parts.Count ? "with powders alone" : "with a powder";
        }
    }

    private IEnumerable<string> Air(Piece piece)
    {
        if (_air.LastOrDefault(one => one.At <= piece.PouredAt && one.At >= piece.PouredAt - Fresh) is not { } air)
        {
            yield break;
        }

        if (air.Humidity.Percent > DampPercent)
        {
            yield return $"in air over {Show.Number(DampPercent)} %";
        }

        if (air.Temperature.Celsius < ColdCelsius)
        {
            yield return $"poured below {Show.Degrees(Temperature.FromCelsius(ColdCelsius))}";
        }
        else if (air.Temperature.Celsius > WarmCelsius)
        {
            yield return $"poured above {Show.Degrees(Temperature.FromCelsius(WarmCelsius))}";
        }
    }

    private IEnumerable<string> Flow(Piece piece)
    {
        if (piece.Batch is not { } batch || !_flows.TryGetValue(batch, out var reading))
        {
            yield break;
        }

        var against = reading.Seconds.TotalSeconds / _usual[Cup(reading)];
        if (Math.Abs(against - 1) >= Apart)
        {
            yield return against < 1 ? "from batches thinner than most" : "from batches thicker than most";
        }
    }

    private static string Cup(FlowReading reading) => reading is FlowReading.OfCup cup ? cup.Cup.Name : "";
}
