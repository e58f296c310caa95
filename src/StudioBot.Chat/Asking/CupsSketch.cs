using StudioBot.Chat.Pictures;
using StudioBot.Chat.Reading.Values;
using StudioBot.Chat.Replies;
using StudioBot.Craft.Pours;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;

namespace StudioBot.Chat.Asking;

/// <summary>What the picture of a pour's cups shows.</summary>
internal static class CupsSketch
{
    // With more, each has no room for its words.
    private const int MostColours = 9;

    /// <summary>The picture; none where nothing is poured.</summary>
    public static ReplyFile? Of(PourAmounts amounts, Colours colours, SurfaceSet surfaces, double inAll)
    {
        Volume[] cups = [amounts.Base, amounts.PerColour, amounts.Activator];
        return Array.TrueForAll(cups, cup => cup.Millilitres <= 0)
            ? null
            : ReplyFile.Picture("cups.png", () => CupsPicture.Png(Figures(amounts, colours, surfaces, inAll)));
    }

    /// <summary>What it shows.</summary>
    /// <param name="amounts">What to mix.</param>
    /// <param name="colours">How many colours, and the names of those that were named.</param>
    /// <param name="surfaces">What is poured on.</param>
    /// <param name="inAll">What is mixed in all, in millilitres.</param>
    public static CupsFigures Figures(PourAmounts amounts, Colours colours, SurfaceSet surfaces, double inAll)
    {
        var perColour = amounts.PerColour;
        var fullest = new[] { amounts.Base, perColour, amounts.Activator }.Max(Measured);
        var isGrouped = amounts.Colours > MostColours;
        List<Cup> cups = [.. Cups()];
        return new CupsFigures(
            $"{Show.Surfaces(surfaces)}: {amounts.Technique.Name}",
            $"{Show.Number(inAll, 0)} ml in all, with {Show.Volume(PourAmounts.WasteOfACup)} that stay in each cup.",
            cups,
            isGrouped ? colours.Names : []);

        IEnumerable<Cup> Cups()
        {
            if (amounts.Base.Millilitres > 0)
            {
                yield return One(CupKind.Base, "base coat", amounts.Base);
            }

            if (perColour.Millilitres > 0 && isGrouped)
            {
                var each = One(CupKind.Colour, "colours", perColour);
                yield return each with { Amount = $"{amounts.Colours} × {each.Amount}", Count = amounts.Colours };
            }

            for (var at = 0; at < amounts.Colours && !isGrouped && perColour.Millilitres > 0; at++)
            {
                var name = at < colours.Names.Count ? colours.Names[at] : $"colour {at + 1}";
                yield return One(CupKind.Colour, name, perColour);
            }

            if (amounts.Activator.Millilitres > 0)
            {
                yield return One(CupKind.Activator, "activator", amounts.Activator);
            }
        }

        Cup One(CupKind kind, string name, Volume volume) =>
            new(kind, name, Show.ToMeasure(volume), Measured(volume) / fullest);
    }

    private static double Measured(Volume volume) => Show.Measurable(volume).Millilitres;
}
