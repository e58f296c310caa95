using StudioBot.Chat.Asking;
using StudioBot.Chat.Learning;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using StudioBot.Records.Recipes;

namespace StudioBot.Chat.Coats;

/// <summary>The resin that a batch is of.</summary>
/// <param name="System">The known resin whose ratio it comes nearest to.</param>
/// <param name="Against">Why its sheet's time says nothing of this batch; none where it does.</param>
internal sealed record BatchResin(ResinSystem System, string? Against)
{
    // A sample is weighed to the gram, a cup by marks (common practice).
    private const double Beyond = 1.1;

    /// <summary>The resin of a batch as it was mixed; none where A and B are not both in it, or what is in it is not on
    /// record.</summary>
    public static BatchResin? Of(Batch batch, Studio studio) => Of([batch], studio).GetValueOrDefault(batch.Number);

    /// <summary>Those of these batches, by their numbers; without those of which nobody can say.</summary>
    public static IReadOnlyDictionary<int, BatchResin> Of(IReadOnlyCollection<Batch> batches, Studio studio)
    {
        Dictionary<int, BatchResin> found = [];
        if (batches.Count == 0)
        {
            return found;
        }

        var contents = new BatchContents(batches, studio.View);
        var forms = studio.View.Materials.All().ToDictionary(one => one.Name, one => one.Form);
        var resin = ResinJob.Resins(null, studio).Resin;
        foreach (var batch in batches)
        {
            if (batch.ActId is { } made && contents.At(batch, made) is { } holds
                && Of(Sum(holds, MaterialForm.ResinA), Sum(holds, MaterialForm.HardenerB), resin, studio) is { } known)
            {
                found[batch.Number] = known;
            }
        }

        return found;

        Volume Sum(IReadOnlyDictionary<string, double> holds, MaterialForm form) => Volume.FromMillilitres(
            holds.Where(one => forms.GetValueOrDefault(one.Key) == form).Sum(one => one.Value));
    }

    private static BatchResin? Of(Volume a, Volume b, Resin resin, Studio studio)
    {
        if (a.Millilitres <= 0 || b.Millilitres <= 0)
        {
            return null;
        }

        var (system, check) = studio.Practice.Resins
            .Select(one => (one, RatioCheck.Of(new Resin(one.Ratio.Value, resin.PartA, resin.PartB), a, b)))
            .MinBy(one => Math.Abs(one.Item2.Off));
        var sample = system.PotLife.Value.Sample;
        return new BatchResin(system, check.Verdict == RatioVerdict.DoNotPour
            ? "A and B are off every known ratio"
            : (a * resin.PartA + b * resin.PartB).Grams > Beyond * sample.Grams
                ? $"more than the sheet's {sample.Grams:0} g in a cup gels sooner, by no simple law"
                : null);
    }
}
