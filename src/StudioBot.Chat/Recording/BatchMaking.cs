using StudioBot.Chat.Asking;
using StudioBot.Chat.Replies;
using StudioBot.Chat.Sharing;
using StudioBot.Craft;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;
using CraftRecipe = StudioBot.Craft.Mixing.Recipe;
using Recipe = StudioBot.Records.Recipes.Recipe;

namespace StudioBot.Chat.Recording;

/// <summary>A recipe brought to the size of a batch, each part in its own measure.</summary>
/// <param name="Whole">How much it makes.</param>
/// <param name="Parts">What it takes.</param>
internal sealed record BatchMaking(Volume Whole, IReadOnlyList<Need> Parts)
{
    /// <summary>The parts for so much of the recipe, or why there are none.</summary>
    public static (BatchMaking? Making, Reply? Trouble) Of(Recipe recipe, Amount amount, Writing writing)
    {
        var materials = writing.Session.Materials.All().ToDictionary(material => material.Name);
        var saved = new CraftRecipe(recipe.Name, [.. recipe.Parts.Select(InParts)]);
        Density? DensityOf(string name) => materials[name].Density;
        var scaled = amount switch
        {
            Amount.ByMass mass => Scaling.To(saved, mass.Mass, DensityOf),
            Amount.ByVolume volume => Scaling.To(saved, volume.Volume, DensityOf),
            _ => throw new InvalidOperationException("A batch is measured."),
        };
        if (scaled is not Finding<IReadOnlyList<ScaledPart>>.Found { Value: var sized })
        {
            var none = (Finding<IReadOnlyList<ScaledPart>>.None)scaled;
            return (null, Trouble(Sentences.Capital(none.Why), none.Instead));
        }

        List<Need> needs = [];
        for (var at = 0; at < sized.Count; at++)
        {
            var part = sized[at];
            Amount measured = saved.Parts[at].By == RatioBy.Mass
                ? new Amount.ByMass(part.Mass!.Value)
                : new Amount.ByVolume(part.Volume!.Value);
            var (own, trouble) = OwnMeasure.Of(materials[part.Material], measured, writing);
            if (trouble is not null)
            {
                return (null, trouble);
            }

            needs.Add(own!.Need);
        }

        return Sum(sized, amount) is { } whole
            ? (new BatchMaking(whole, needs), null)
            : (null, Trouble($"The density of a part of {recipe.Name} is not known", "Say how many ml you made."));
    }

    /// <summary>Trouble that says why and what to do.</summary>
    public static Reply Trouble(string why, string instead) =>
        new(new Block.Headline($"{why}. Nothing recorded."), new Block.Line(instead)) { IsTrouble = true };

    private static Volume? Sum(IReadOnlyList<ScaledPart> parts, Amount amount) => amount switch
    {
        Amount.ByVolume volume => volume.Volume,
        _ when parts.All(part => part.Volume is not null) =>
            parts.Aggregate(default(Volume), (sum, part) => sum + part.Volume!.Value),
        _ => null,
    };

    private static Part InParts(Records.Recipes.Part part) => part.Amount switch
    {
        Amount.ByMass mass => new Part(part.Material, mass.Mass.Grams, RatioBy.Mass),
        Amount.ByVolume volume => new Part(part.Material, volume.Volume.Millilitres),
        _ => throw new InvalidOperationException($"{part.Material} is counted: no part of a mixture."),
    };
}
