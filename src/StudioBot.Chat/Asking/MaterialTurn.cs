using StudioBot.Chat.Reading;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Asking;

/// <summary>A volume of a material as a mass, or the other way.</summary>
/// <param name="Value">In g or ml.</param>
/// <param name="Grounds">The density used, as a sentence.</param>
internal sealed record MaterialTurn(double Value, string Grounds)
{
    private static readonly HashSet<string> Spoons = ["tsp", "tbsp", "spoon", "scoop"];

    /// <summary>The turned value, or why there is none.</summary>
    /// <param name="material">Which has both.</param>
    /// <param name="value">In ml or g.</param>
    /// <param name="from">The unit it was said in.</param>
    /// <param name="to">The unit wanted.</param>
    /// <param name="who">By whose spoons.</param>
    /// <param name="studio">The studio.</param>
    public static (MaterialTurn? Turned, Reply? Trouble) Of(
        Material material, double value, UnitSize from, UnitSize to, Speaker who, Studio studio)
    {
        var isInSpoons = Spoons.Contains(from.Name) || Spoons.Contains(to.Name);
        if (isInSpoons && material.Form is MaterialForm.ResinA or MaterialForm.HardenerB)
        {
            return (null, Trouble(
                $"Not {material.Name} by the spoon",
                "A spoon is off by more than resin forgives: weigh it, or use a cup with marks."));
        }

        // A level spoon is a level spoon, whichever of the two words it was weighed under.
        var spoon = from.Name == "spoon" ? from : to.Name == "spoon" ? to : UnitSize.Of("tsp", who, studio);
        if (Dense(material, Volume.FromMillilitres(spoon.One)) is { } density)
        {
            var turned = from.Measure == Measure.Volume
                ? (Volume.FromMillilitres(value) * density).Grams
                : (Mass.FromGrams(value) / density).Millilitres;
            return (new MaterialTurn(turned, Used(material, density)), null);
        }

        return (null, material.Form switch
        {
            MaterialForm.Powder => Trouble(
                $"Nobody weighed a spoon of {material.Name}",
                "Weigh a level teaspoon and set it as its grams per spoon."),
            MaterialForm.Counted =>
                Trouble($"{material.Name} is counted, not measured", "Name what is poured or weighed."),
            _ => Trouble(
                $"The density of {material.Name} is not known",
                "Weigh 100 ml of it: grams by 100 are its density."),
        });
    }

    // A powder is spooned loose: its grains' own density would weigh it six times too heavy.
    private static Density? Dense(Material material, Volume spoon) => material.Form switch
    {
        MaterialForm.Powder => material.GramsPerTeaspoon is { } weighed ? weighed / spoon : null,
        MaterialForm.Counted => null,
        _ => material.Density,
    };

    private static string Used(Material material, Density density) => material.Form == MaterialForm.Powder
        ? $"Loose, {Show.Mass(material.GramsPerTeaspoon!.Value)} a level teaspoon as recorded: "
            + $"{Show.Number(density.GramsPerMillilitre, 2)} g/ml."
        : $"At {Show.Number(density.GramsPerMillilitre, 3)} g/ml, as recorded for {material.Name}.";

    private static Reply Trouble(string why, string instead) =>
        new(new Block.Headline(why + "."), new Block.Line(instead)) { IsTrouble = true };
}
