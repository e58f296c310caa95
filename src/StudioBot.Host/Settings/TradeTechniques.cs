using StudioBot.Craft.Pours;
using StudioBot.Craft.Practice;
using StudioBot.Craft.Units;

namespace StudioBot.Host.Settings;

/// <summary>Reads <c>techniques.json</c>: the ways to pour and the defaults of a pour.</summary>
internal static class TradeTechniques
{
    private static readonly TradeBounds Colours = new(1, 24, 4);
    private static readonly TradeBounds WasteMl = new(0, 50, 3);
    private static readonly TradeBounds PowderGramsPerMl = new(0.001, 1, 0.1);
    private static readonly TradeBounds Pours = new(0.5, 100, 4);
    private static readonly TradeBounds SpreadMm = new(0.05, 3, 0.5);
    private static readonly TradeBounds DivisionG = new(0.001, 10, 0.1);

    /// <summary>Everything a pour takes where nobody says otherwise; none where the usual one is unknown.</summary>
    public static PourPractice? Read(TradeNode file)
    {
        var names = new TradeNames();
        var techniques = file.List("techniques", node => Technique(node, names));
        var usual = file.Sourced("usualTechnique", node => node.Named(techniques, technique => technique.Value.Name));

        // Every key is read, and checked, even where the usual technique is missing and the whole is of no use.
        var pours = new PourPractice(
            techniques,
            new(usual.Value?.Value!, usual.Provenance),
            file.Sourced("usualColours", node => node.Whole("value", Colours)),
            file.Sourced("cupWasteMl", WasteMl, Volume.FromMillilitres),
            file.Sourced("sideFilmMm", TradeBounds.FilmMm, Length.FromMillimetres),
            file.Sourced("mediumRatio", node => node.Ratio("value")),
            file.Sourced("warmMediumRatio", node => node.Ratio("value")),
            file.Sourced("powderGramsPerMl", PowderGramsPerMl, Density.FromGramsPerMillilitre),
            file.Sourced("mostWater", TradeBounds.Share, share => share),
            file.Sourced("priorWeight", Pours, pours => pours),
            file.Sourced("spreadMm", SpreadMm, Length.FromMillimetres),
            file.Object("tools", Tools));
        return usual.Value is null ? null : pours;
    }

    private static PourTools Tools(TradeNode node) => new(
        node.Sourced("scoopMl", TradeBounds.ToolMl, Volume.FromMillilitres),
        node.Sourced("spoonMl", TradeBounds.ToolMl, Volume.FromMillilitres),
        node.Sourced("halfSpoonMl", TradeBounds.ToolMl, Volume.FromMillilitres),
        node.Sourced("syringeStepMl", TradeBounds.ToolMl, Volume.FromMillilitres),
        node.Sourced("scaleDivisionG", DivisionG, Mass.FromGrams));

    private static Sourced<Technique> Technique(TradeNode node, TradeNames names)
    {
        var (name, others) = names.Read(node, "otherNames", "bloom");
        var layers = node.List("layers", Layer);
        var laid = node.Object("laidMm", TradeFilms.Scattered);
        var runOff = node.Object("runOff", TradeFilms.RunOff);
        TradeFilms.CheckSum(node, layers, laid);
        return new(new(name, others, layers, laid, runOff.Usual, runOff.Low, runOff.High), node.Provenance());
    }

    private static Layer Layer(TradeNode node) =>
        new(node.Choice<LayerKind>("kind"), node.Object("filmMm", TradeFilms.PerhapsScattered));
}
