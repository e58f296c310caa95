using StudioBot.Chat.Reading;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Pours;
using StudioBot.Craft.Practice;

namespace StudioBot.Chat.Asking;

/// <summary>What goes into each cup of a pour: medium, thinner and pigment.</summary>
internal static class PourMixes
{
    /// <summary>The mix of one colour's cup, and of the medium for all of them.</summary>
    public static Reply Of(PourAmounts amounts, Colours colours, Phrase said, Studio studio)
    {
        var practice = studio.Practice.Pours;
        var each = amounts.PerColour + PourAmounts.WasteOfACup;
        var medium = Show.Measurable(each);
        var all = Show.Measurable(medium * amounts.Colours);
        var parts = Parts.Of(practice.MediumRatio.Value, all);
        var powder = medium * practice.PowderPerMedium.Value;
        List<Block> blocks =
        [
            new Block.Headline($"Each colour's cup: {Show.ToMeasure(medium)} of medium"),
            new Block.Figures(
            [
                new Figure("Mica, as the only colour", Show.Mass(powder)),
                new Figure($"Medium for {amounts.Colours}", Show.Volume(all)),
                new Figure("  thick base", Show.Volume(parts[0])),
                new Figure("  gloss varnish", Show.Volume(parts[1])),
            ]),
            new Block.Line($"Medium {practice.MediumRatio.Value} by volume; "
                + $"nearer {practice.WarmMediumRatio.Value} in the heat. "
                + "Wet the powder in varnish, add most of the medium, read the trace, then the rest."),
            Cautions.InShort(studio, SafetySubject.Powder),
        ];
        if (colours.Names.Count > 1 && colours.Names.All(name => name.EndsWith("mica", StringComparison.Ordinal)))
        {
            blocks.Insert(
                3, new Block.Line(RecipeHazards.OnlyPowders));
        }

        return new Reply(
            blocks, [new Button("Back to the cups", said.Line.Replace(" mixes", "", StringComparison.Ordinal))]);
    }
}
