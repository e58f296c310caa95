using StudioBot.Craft.Drying;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Units;
using StudioBot.Records;
using StudioBot.Records.Materials;
using StudioBot.Records.Pieces;
using StudioBot.Records.Recipes;

namespace StudioBot.Chat.Drying;

/// <summary>What pieces were poured with, as far as the water in it goes.</summary>
internal sealed class PieceMixes
{
    private readonly Dictionary<long, Material> _materials;
    private readonly Dictionary<string, StarterMaterial> _trade;
    private readonly Dictionary<string, Recipe> _recipes;
    private readonly Dictionary<int, string> _recipeOfBatch;
    private readonly Dictionary<string, PieceMix> _mixOfRecipe = [];

    /// <summary>By what this studio knows of its materials, else by what the trade assumes of them.</summary>
    public PieceMixes(StudioView view, TradePractice practice)
    {
        _materials = view.Materials.All().ToDictionary(material => material.Id);
        _trade = practice.Materials
            .SelectMany(material => material.OtherNames.Prepend(material.Name).Select(name => (name, material)))
            .DistinctBy(pair => pair.name, StringComparer.OrdinalIgnoreCase)
            .ToDictionary(pair => pair.name, pair => pair.material, StringComparer.OrdinalIgnoreCase);
        _recipes = view.Recipes.All().ToDictionary(recipe => recipe.Name, StringComparer.OrdinalIgnoreCase);
        _recipeOfBatch = view.Batches.All().ToDictionary(batch => batch.Number, batch => batch.Recipe);
    }

    /// <summary>The mix of its own parts, else of its recipe, else of its batch; else one nobody knows.</summary>
    public PieceMix Of(Piece piece)
    {
        if (piece.Parts.Count > 0)
        {
            return Of(piece.Parts);
        }

        var recipe = piece.Recipe ?? (piece.Batch is { } batch ? _recipeOfBatch.GetValueOrDefault(batch) : null);
        if (recipe is null || !_recipes.TryGetValue(recipe, out var saved))
        {
            return PieceMix.Unknown;
        }

        if (!_mixOfRecipe.TryGetValue(recipe, out var mix))
        {
            _mixOfRecipe[recipe] = mix = Of(saved.Parts);
        }

        return mix;
    }

    private PieceMix Of(IReadOnlyList<Part> parts)
    {
        Volume whole = default;
        List<WetPart> wet = [];
        foreach (var part in parts)
        {
            var material = _materials.GetValueOrDefault(part.MaterialId);
            var trade = _trade.GetValueOrDefault(part.Material);
            var density = material?.Density ?? trade?.Density?.Value ?? PieceMix.Unknown.Whole;
            var (volume, mass) = part.Amount switch
            {
                Amount.ByVolume poured => (poured.Volume, poured.Volume * density),
                Amount.ByMass weighed => (weighed.Mass / density, weighed.Mass),
                _ => default,
            };
            whole += volume;
            wet.Add(new WetPart(mass, Solids(material, trade)));
        }

        if (whole.Millilitres <= 0 || WaterContent.Of(wet) is not { Grams: > 0 } water)
        {
            return PieceMix.Unknown;
        }

        var all = wet.Sum(part => part.Mass.Grams);
        return new PieceMix(water / whole, Mass.FromGrams(Math.Max(0, all - water.Grams)) / whole);
    }

    // A powder stays whole, and so does a resin.
    private static double Solids(Material? material, StarterMaterial? trade) =>
        material?.SolidsShare
        ?? trade?.Solids?.Value
        ?? (material?.Form is MaterialForm.Powder or MaterialForm.ResinA or MaterialForm.HardenerB
            ? 1
            : PieceMix.UsualSolids);
}
