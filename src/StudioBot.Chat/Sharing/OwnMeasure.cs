using StudioBot.Chat.Asking;
using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Units;
using StudioBot.Records.Materials;

namespace StudioBot.Chat.Sharing;

/// <summary>So much of a material, turned into the measure in which it is kept.</summary>
/// <param name="Need">The material, and how much.</param>
/// <param name="Grounds">How it was turned, as a sentence; none where it was said so.</param>
internal sealed record OwnMeasure(Need Need, string? Grounds)
{
    // Less than one whole unit of the book.
    private const double Least = 0.0005;

    /// <summary>A level teaspoon, as spoons are read in a message.</summary>
    public static Volume Teaspoon { get; } = Volume.FromMillilitres(UnitWords.Of("tsp")!.Factor);

    /// <summary>The materials of a list, each once and in its own measure, or why one can't be.</summary>
    public static (IReadOnlyList<OwnMeasure> Own, Reply? Trouble) Of(
        ItemList items, Writing writing, bool mayBeNothing = false)
    {
        var materials = writing.Session.Materials.All().ToDictionary(material => material.Name);
        List<OwnMeasure> own = [];
        foreach (var item in items.Items)
        {
            var (turned, trouble) = Of(materials[item.Material], item.Amount, writing);
            if (trouble is not null)
            {
                return ([], trouble);
            }

            if (turned!.Need.Units < Least && !mayBeNothing)
            {
                return ([], Trouble(
                    $"“{AmountWords.Say(item.Amount)}” {item.Material} is too little to book",
                    "The books count in thousandths of a ml or a g. Try",
                    "used 20 ml white",
                    writing));
            }

            own.Add(turned);
        }

        return ([.. own.GroupBy(one => one.Need.Material.Id).Select(Together)], null);
    }

    /// <summary>So much of one material in its own measure, or why it can't be.</summary>
    public static (OwnMeasure? Own, Reply? Trouble) Of(Material material, Amount amount, Writing writing) =>
        (material.Form, amount) switch
        {
            (MaterialForm.Counted, Amount.ByCount) or (MaterialForm.Powder, Amount.ByMass) =>
                (As(material, amount), null),
            (MaterialForm.Counted, _) => (null, Trouble(
                $"“{AmountWords.Say(amount)}” {material.Name} can't be: it is counted",
                "Say how many, with no unit:",
                $"used 8 {material.Name}",
                writing)),
            (_, Amount.ByCount) => (null, Trouble(
                $"{Sentences.Capital(material.Name)} is measured, not counted",
                "Say how much:",
                material.Form == MaterialForm.Powder ? $"used 10 g {material.Name}" : $"used 20 ml {material.Name}",
                writing)),
            (MaterialForm.Powder, Amount.ByVolume spooned) => Spooned(material, spooned.Volume, writing),
            (_, Amount.ByMass weighed) => Weighed(material, weighed.Mass, writing),
            _ => (As(material, amount), null),
        };

    /// <summary>Trouble that says why, what to do, and a message that does it.</summary>
    public static Reply Trouble(string why, string instead, string sample, Writing writing) => new(
        new Block.Headline($"{why}. Nothing recorded."),
        new Block.Line(instead),
        new Block.Sample(Typed.In(writing.Turn, sample)))
    {
        IsTrouble = true,
    };

    /// <summary>20 ml white, 8 × cup.</summary>
    public static string Say(Need need) => need.Material.Form == MaterialForm.Counted
        ? $"{Show.Amount(need.Amount)} × {need.Material.Name}"
        : $"{Show.Amount(need.Amount)} {need.Material.Name}";

    private static (OwnMeasure?, Reply?) Spooned(Material material, Volume volume, Writing writing)
    {
        if (material.GramsPerTeaspoon is not { } spoon)
        {
            return (null, Trouble(
                $"Nobody weighed a spoon of {material.Name}",
                "Give grams; or weigh a level teaspoon, and a steward sets it:",
                $"material {material.Name} spoon 2.2 g",
                writing));
        }

        var mass = Mass.FromGrams(volume / Teaspoon * spoon.Grams);
        return (new OwnMeasure(
            new Need(material, mass.Grams),
            $"{Show.Volume(volume)} of {material.Name} taken as {Show.Mass(mass)}: "
                + $"{Show.Mass(spoon)} a level teaspoon."), null);
    }

    private static (OwnMeasure?, Reply?) Weighed(Material material, Mass mass, Writing writing)
    {
        if (material.Density is not { GramsPerMillilitre: > 0 } density)
        {
            return (null, Trouble(
                $"The density of {material.Name} is not known",
                "Give ml; or weigh 100 ml, divide by 100, and a steward sets it:",
                $"material {material.Name} density 1.05",
                writing));
        }

        var volume = mass / density;
        return (new OwnMeasure(
            new Need(material, volume.Millilitres),
            $"{Show.Mass(mass)} of {material.Name} taken as {Show.Volume(volume)}, "
                + $"at {Show.Number(density.GramsPerMillilitre, 3)} g/ml."), null);
    }

    private static OwnMeasure As(Material material, Amount amount) =>
        new(new Need(material, Need.UnitsOf(amount)), null);

    private static OwnMeasure Together(IEnumerable<OwnMeasure> same)
    {
        List<OwnMeasure> all = [.. same];
        var grounds = string.Join(' ', all.Select(one => one.Grounds).OfType<string>());
        return new OwnMeasure(
            all[0].Need with { Units = all.Sum(one => one.Need.Units) }, grounds.Length > 0 ? grounds : null);
    }
}
