using StudioBot.Chat.Reading;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Units;

namespace StudioBot.Chat.Asking;

/// <summary>How big one of a unit is for this person in this studio.</summary>
/// <param name="Name">As it is typed: fl oz.</param>
/// <param name="Measure">What it measures.</param>
/// <param name="One">In ml, g, cm or cm².</param>
/// <param name="Full">As a note names it: US fl oz.</param>
/// <param name="IsTaken">Whether it stands for an ounce that may have been meant as a mass.</param>
internal sealed record UnitSize(string Name, Measure Measure, double One, string Full, bool IsTaken = false)
{
    private const string FluidOunce = "fl oz";
    private static readonly HashSet<string> Counted = ["drop", "scoop", "spoon", "pint", "quart", "gallon"];
    private static readonly HashSet<string> Plain =
        ["cm", "mm", "m", "ml", "cl", "dl", "l", "g", "kg", "mg", "cm2", "m2"];

    /// <summary>The unit of this short name.</summary>
    public static UnitSize Of(string unit, Speaker who, Studio studio)
    {
        if (unit == "scoop")
        {
            var scoop = studio.View.Studio.Settings()?.Scoop ?? studio.Practice.Pours.Tools.Scoop.Value;
            return new UnitSize(unit, Measure.Volume, scoop.Millilitres, "scoop here");
        }

        var origin = who.Units == UnitSystem.Imperial ? UnitOrigin.Imperial : UnitOrigin.Us;
        return (UnitNames.Find(unit, origin), UnitWords.Of(unit)) switch
        {
            (UnitName.OfVolume volume, _) => new UnitSize(unit, Measure.Volume, volume.One.Millilitres, volume.Name),
            (_, { } word) => new UnitSize(unit, word.Measure, word.Factor, unit),
            _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "No unit."),
        };
    }

    /// <summary>
    /// An ounce made a fluid ounce where only that can be meant, and a mass otherwise; others as they are.
    /// </summary>
    public UnitSize Settled(bool isLiquid, Speaker who) => Measure != Measure.Ounce ? this
        : !isLiquid ? this with { Measure = Measure.Mass }
        : UnitNames.Find(FluidOunce, OriginFor(who)) is UnitName.OfVolume volume
            ? new UnitSize(FluidOunce, Measure.Volume, volume.One.Millilitres, volume.Name, IsTaken: true)
            : throw new InvalidOperationException("There are fluid ounces.");

    private static UnitOrigin OriginFor(Speaker who) =>
        who.Units == UnitSystem.Imperial ? UnitOrigin.Imperial : UnitOrigin.Us;

    /// <summary>What was taken for units that are not the same everywhere.</summary>
    public static IEnumerable<string> Notes(UnitSize from, UnitSize to, Studio studio)
    {
        foreach (var unit in new[] { from, to }.Where(unit => !Plain.Contains(unit.Name)).DistinctBy(unit => unit.Name))
        {
            yield return unit.Name switch
            {
                "drop" =>
                    $"A drop is taken as {Show.Significant(unit.One)} ml: water from a dropper. "
                    + "Drops of paint vary by a factor of two.",
                "spoon" => $"A spoon is taken as {Show.Significant(unit.One)} ml, level.",
                "tsp" or "tbsp" => $"1 {unit.Full} = {Show.Significant(unit.One)} ml, level.",
                "scoop" =>
                    $"1 {unit.Full} = {Show.Significant(unit.One)} ml.{(studio.IsSample ? " (Invented studio.)" : "")}",
                _ when unit.IsTaken => $"oz taken as {unit.Full} of {Show.Significant(unit.One)} ml, as of a liquid.",
                _ => $"1 {unit.Full} = {Show.Significant(unit.One)} {Base(unit.Measure)}.",
            };
        }

        if (from.Name is "tsp" or "tbsp" || to.Name is "tsp" or "tbsp")
        {
            yield return "Spoons of food labels hold 5 and 15 ml.";
        }
    }

    /// <summary>So many of it, as one says it: 3 scoops.</summary>
    public string Count(string figure) => $"{figure} {Name}{(figure != "1" && Counted.Contains(Name) ? "s" : "")}";

    private static string Base(Measure measure) => measure switch
    {
        Measure.Volume => "ml",
        Measure.Mass => "g",
        Measure.Length => "cm",
        _ => "cm²",
    };
}
