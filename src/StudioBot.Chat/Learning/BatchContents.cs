using StudioBot.Chat.Asking;
using StudioBot.Records;
using StudioBot.Records.Materials;
using StudioBot.Records.Recipes;
using StudioBot.Records.Stock;

namespace StudioBot.Chat.Learning;

/// <summary>What batches hold, by what was mixed into them, put in later and drawn from them.</summary>
/// <remarks>What is drawn leaves the shares as they are. A powder takes the room of its grains, where its density is
/// known.</remarks>
internal sealed class BatchContents
{
    private readonly Dictionary<long, Material> _materials;
    private readonly ILookup<int, TrailLine> _lines;
    private readonly ILookup<long, StockLine> _drawn;

    /// <summary>Of these batches.</summary>
    public BatchContents(IReadOnlyCollection<Batch> batches, StudioView view)
    {
        _materials = view.Materials.All().ToDictionary(material => material.Id);
        _lines = batches
            .Where(batch => batch.LotId is not null)
            .SelectMany(batch => view.Trails.Lines(batch.LotId!.Value).Select(line => (batch.Number, Line: line)))
            .ToLookup(one => one.Number, one => one.Line);
        _drawn = view.Stock
            .HoldingOf(_lines.SelectMany(batch => batch).Where(line => line.Fills).Select(line => line.ActId)
                .Concat(batches.Select(batch => batch.ActId).OfType<long>()).Distinct())
            .Where(line => line is { Reason: StockReason.Mixed, Fills: false })
            .ToLookup(line => line.ActId);
    }

    /// <summary>Millilitres of each material in a batch once this act was written; none where what went in is not on
    /// record. A batch that stands in no stock is known only as it was mixed.</summary>
    public IReadOnlyDictionary<string, double>? At(Batch batch, long act)
    {
        if (batch.ActId is not { } made || !_drawn.Contains(made))
        {
            return null;
        }

        if (batch.LotId is null)
        {
            return act == made ? Into([], made) : null;
        }

        Dictionary<string, double> holds = [];
        foreach (var line in _lines[batch.Number].TakeWhile(line => line.ActId <= act))
        {
            holds = line is { Fills: true, Reason: StockReason.Made }
                ? Into(holds, line.ActId)
                : Moved(holds, line.Fills ? Need.UnitsOf(line.Amount) : -Need.UnitsOf(line.Amount));
        }

        return holds.Values.Sum() > 0 ? holds : null;
    }

    private Dictionary<string, double> Into(Dictionary<string, double> holds, long act)
    {
        foreach (var line in _drawn[act])
        {
            var material = _materials[line.MaterialId];
            holds[material.Name] = holds.GetValueOrDefault(material.Name) + Room(material, line.Amount);
        }

        return holds;
    }

    private static Dictionary<string, double> Moved(Dictionary<string, double> holds, double by)
    {
        var all = holds.Values.Sum();
        return all <= 0 ? holds : holds.ToDictionary(one => one.Key, one => one.Value * Math.Max(0, 1 + by / all));
    }

    private static double Room(Material material, Amount amount) => amount switch
    {
        Amount.ByVolume volume => volume.Volume.Millilitres,
        Amount.ByMass mass when material.Density is { GramsPerMillilitre: > 0 } density =>
            (mass.Mass / density).Millilitres,
        _ => 0,
    };
}
