using StudioBot.Chat.Replies;
using StudioBot.Craft.Coats;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using StudioBot.Records.Recipes;

namespace StudioBot.Chat.Asking;

/// <summary>What is known to go wrong with a mixture of such parts, told before it is poured (common practice).
/// </summary>
internal static class RecipeHazards
{
    /// <summary>A line each, the gravest first; none where nothing is known against it.</summary>
    public static IEnumerable<Block> Of(IReadOnlyList<Part> parts, Studio studio) =>
        All(parts, studio, areAllKnown: true).Select(hazard => hazard.Block);

    /// <summary>The gravest in a few words, told where it is mixed or poured; none where nothing is known against it.
    /// </summary>
    /// <param name="parts">What is in it, as far as it is known.</param>
    /// <param name="studio">The studio.</param>
    /// <param name="areAllKnown">Whether these are all its colours.</param>
    public static Block? Gravest(IReadOnlyList<Part> parts, Studio studio, bool areAllKnown = true) =>
        All(parts, studio, areAllKnown).FirstOrDefault().Short is { } words ? new Block.Caution(words) : null;

    private static IEnumerable<(Block Block, string Short)> All(
        IReadOnlyList<Part> parts, Studio studio, bool areAllKnown)
    {
        if (OffRatio(parts, studio) is { } off)
        {
            yield return (new Block.Caution(off), off);
        }

        var kinds = parts.Select(part => Known(part.Material, studio)).ToList();
        if (kinds.FirstOrDefault(kind => kind?.CautionAsBase is not null) is { CautionAsBase: { } caution })
        {
            yield return (new Block.Line(caution.Value), caution.Value);
        }

        if (areAllKnown
            && parts.Count(part => part.Amount is Amount.ByMass) > 1
            && !kinds.Any(kind => kind is null or { Kind: MaterialKind.Paint }))
        {
            yield return (new Block.Line(OnlyPowders), "All mica tends to sink: add one tube colour.");
        }

        var (wet, water) = (Wet(parts), Wet(parts, Water));
        var most = studio.Practice.Pours.MostWater.Value;
        if (wet.Millilitres > 0 && water / wet > most)
        {
            yield return (
                new Block.Line(
                    $"Water is {Show.Share(water / wet)} of it: over {Show.Share(most)} stretches the binder, and the "
                    + "film cracks or stays dull. Thin with medium."),
                $"Water is {Show.Share(water / wet)}: over {Show.Share(most)} it may crack. Thin with medium.");
        }
    }

    // By how much A and B are off the ratio of the known resin that they come nearest to; none where they meet one, or
    // are not both in it.
    private static string? OffRatio(IReadOnlyList<Part> parts, Studio studio)
    {
        var forms = studio.View.Materials.All().ToDictionary(one => one.Name, one => one.Form);
        var resin = ResinJob.Resins(null, studio).Resin;
        var (a, b) = (Sum(MaterialForm.ResinA, resin.PartA), Sum(MaterialForm.HardenerB, resin.PartB));
        if (a.Millilitres <= 0 || b.Millilitres <= 0)
        {
            return null;
        }

        var (ratio, check) = studio.Practice.Resins
            .Select(one => one.Ratio.Value)
            .Select(known => (known, RatioCheck.Of(new Resin(known, resin.PartA, resin.PartB), a, b)))
            .MinBy(one => Math.Abs(one.Item2.Off));
        var off = $"B is {Show.Share(Math.Abs(check.Off))} {(check.Off < 0 ? "short" : "over")} for "
            + ResinJob.Words(ratio);
        return check.Verdict switch
        {
            RatioVerdict.Fine => null,
            RatioVerdict.Caution => $"{off}: put it right while it is fresh. The product's sheet first.",
            _ => $"{off}: don't pour. {StaysSoft}",
        };

        Volume Sum(MaterialForm form, Density density) => parts
            .Where(part => forms.GetValueOrDefault(part.Material) == form)
            .Select(part => part.Amount switch
            {
                Amount.ByVolume volume => volume.Volume,
                Amount.ByMass mass => mass.Mass / density,
                _ => default,
            })
            .Aggregate(default(Volume), (sum, one) => sum + one);
    }

    /// <summary>What comes of a mix that is far off its ratio.</summary>
    public const string StaysSoft =
        "It stays soft or sticky, and uncured resin harms skin: gloves. The product's sheet first.";

    /// <summary>What thins, by its name.</summary>
    public const string Water = "water";

    /// <summary>Of colours that are powders only.</summary>
    public const string OnlyPowders = "All mica tends to sink and shift: one tube colour among them steadies it.";

    private static StarterMaterial? Known(string material, Studio studio) =>
        studio.Practice.Materials.FirstOrDefault(one => one.Name == material);

    /// <summary>What is liquid of these parts.</summary>
    /// <param name="parts">The parts.</param>
    /// <param name="material">Of this material alone; none: of all.</param>
    public static Volume Wet(IEnumerable<Part> parts, string? material = null) => parts
        .Where(part => material is null || part.Material == material)
        .Select(part => part.Amount)
        .OfType<Amount.ByVolume>()
        .Aggregate(default(Volume), (sum, part) => sum + part.Volume);
}
