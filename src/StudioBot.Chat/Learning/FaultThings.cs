using StudioBot.Chat.Recording;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Flow;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using StudioBot.Records.Pieces;
using StudioBot.Records.Rooms;

namespace StudioBot.Chat.Learning;

/// <summary>What pieces with a fault may share: how, with what, from which lots and batches and in what air they were
/// poured, from which lots they were coated, in which rooms they lay.</summary>
internal sealed class FaultThings
{
    // Where paint is said to dry badly (common practice).
    private const double DampPercent = 60;
    private const double ColdCelsius = 18;
    private const double WarmCelsius = 26;

    // A cup repeats within a tenth (common practice); a fifth is another batch.
    private const double Apart = 0.2;

    // More than the batches that as many pieces are poured from as are looked at.
    private const int MostFlows = 1000;

    private static readonly TimeSpan Fresh = TimeSpan.FromHours(12);

    private readonly Dictionary<string, MaterialForm> _forms;
    private readonly ILookup<int, string> _lots;
    private readonly ILookup<int, string> _coatLots;
    private readonly ILookup<int, string> _rooms;
    private readonly Dictionary<int, FlowReading> _flows;
    private readonly Dictionary<string, double> _usual;
    private readonly List<RoomReading> _air;

    /// <summary>Of these pieces.</summary>
    /// <param name="pieces">At least one.</param>
    /// <param name="lines">What happened to them, up to when the fault was told: a cause comes before.</param>
    /// <param name="studio">The records.</param>
    public FaultThings(IReadOnlyList<Piece> pieces, IReadOnlyList<PieceLine> lines, Studio studio)
    {
        var view = studio.View;
        _forms = view.Materials.All().ToDictionary(one => one.Name, one => one.Form);
        _lots = Lots(lines.Where(line => line.What is PieceEvent.Poured), "with", studio);
        var coats = lines.Where(line => line.What is PieceEvent.Coated).ToList();
        _coatLots = Lots(coats, "coated from", studio);
        Coated = coats.Select(line => line.Number).ToHashSet();
        var rooms = PiecePlace.Rooms(view);
        var shelved = lines.Where(line => line.What is PieceEvent.Shelved)
            .ToLookup(line => line.Number, line => ((PieceEvent.Shelved)line.What).Shelf);
        _rooms = pieces
            .SelectMany(piece => shelved[piece.Number].DefaultIfEmpty(null)
                .Select(shelf => (piece.Number, Room: rooms(shelf))))
            .Where(lay => lay.Room is not null)
            .ToLookup(lay => lay.Number, lay => $"that lay in the room {lay.Room}");
        _flows = view.Batches.Flows(MostFlows).GroupBy(flow => flow.Batch)
            .ToDictionary(same => same.Key, same => same.Last().Reading);
        _usual = pieces.Where(piece => piece.Batch is { } batch && _flows.ContainsKey(batch))
            .Select(piece => _flows[piece.Batch!.Value])
            .GroupBy(Cup, reading => reading.Seconds.TotalSeconds)
            .ToDictionary(same => same.Key, same => same.Order().ElementAt(same.Count() / 2));
        var room = view.Rooms.All() is [var first, ..] ? first.Name : null;
        _air = [.. view.Rooms.Readings(pieces.Min(piece => piece.PouredAt) - Fresh).Where(one => one.Room == room)];
    }

    /// <summary>Those that were coated: what tells one coat from another is looked for among them alone.</summary>
    public IReadOnlySet<int> Coated { get; }

    /// <summary>From which lots one of them was coated, each as it follows its number in a sentence.</summary>
    public IEnumerable<string> OfCoat(Piece piece) => _coatLots[piece.Number];

    /// <summary>All else of one of them, each as it follows its number in a sentence.</summary>
    public IEnumerable<string> Of(Piece piece) =>
    [
        .. PieceThings.Of(piece),
        .. Kinds(piece),
        .. _lots[piece.Number],
        .. _rooms[piece.Number],
        .. Air(piece),
        .. Flow(piece),
    ];

    // What pours or coats drew on; a lot without a label nobody could look up.
    private static ILookup<int, string> Lots(IEnumerable<PieceLine> lines, string lead, Studio studio)
    {
        var drew = lines.ToList();
        var drawn = studio.View.Stock.HoldingOf(drew.Select(line => line.ActId).Distinct())
            .Where(line => !line.Fills)
            .ToLookup(line => line.ActId, line => line.LotId);
        var labels = studio.View.Lots.Of(drawn.SelectMany(act => act).Distinct())
            .Where(lot => lot.Label is not null)
            .ToDictionary(lot => lot.Id, lot => lot.Label!);
        return drew
            .SelectMany(line => drawn[line.ActId].Where(labels.ContainsKey)
                .Select(lot => (line.Number, What: $"{lead} lot {labels[lot]}")))
            .ToLookup(one => one.Number, one => one.What);
    }

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
