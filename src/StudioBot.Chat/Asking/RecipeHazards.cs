using StudioBot.Chat.Replies;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using StudioBot.Records.Recipes;

namespace StudioBot.Chat.Asking;

/// <summary>What is known to go wrong with a mixture of such parts, told before it is poured (common practice).
/// </summary>
internal static class RecipeHazards
{
    /// <summary>A line each; none where nothing is known against it.</summary>
    public static IEnumerable<Block> Of(IReadOnlyList<Part> parts, Studio studio)
    {
        var kinds = parts.Select(part => Known(part.Material, studio)).ToList();
        if (kinds.FirstOrDefault(kind => kind?.CautionAsBase is not null) is { CautionAsBase: { } caution })
        {
            yield return new Block.Line(caution.Value);
        }

        if (parts.Count(part => part.Amount is Amount.ByMass) > 1
            && !kinds.Any(kind => kind is null or { Kind: MaterialKind.Paint }))
        {
            yield return new Block.Line(OnlyPowders);
        }

        var (wet, water) = (Wet(parts), Wet(parts, Water));
        var most = studio.Practice.Pours.MostWater.Value;
        if (wet.Millilitres > 0 && water / wet > most)
        {
            yield return new Block.Line(
                $"Water is {Show.Share(water / wet)} of it: over {Show.Share(most)} stretches the binder, and the film "
                + "cracks or stays dull. Thin with medium.");
        }
    }

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
