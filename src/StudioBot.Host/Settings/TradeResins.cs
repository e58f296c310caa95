using StudioBot.Craft.Practice;
using StudioBot.Craft.Units;

namespace StudioBot.Host.Settings;

/// <summary>Reads <c>resins.json</c>: the two-part systems.</summary>
internal static class TradeResins
{
    private static readonly TradeBounds Minutes = new(1, 600, 40);
    private static readonly TradeBounds Hours = new(0.25, 240, 24);
    private static readonly TradeBounds Days = new(0.5, 60, 7);
    private static readonly TradeBounds SampleG = new(10, 1000, 100);

    // A fuller cup than a litre heats itself whatever the sheet allows for a cast.
    private static readonly TradeBounds CupMl = new(20, 1000, 300);

    /// <summary>All systems and the usual one; that is none where it is not to be found.</summary>
    public static (IReadOnlyList<ResinSystem> All, ResinSystem? Usual) Read(TradeNode file)
    {
        var names = new TradeNames();
        var resins = file.List("resins", node => Resin(node, names));
        return (resins, file.Sourced("usualResin", node => node.Named(resins, resin => resin.Name)).Value);
    }

    private static ResinSystem Resin(TradeNode node, TradeNames names)
    {
        var (name, others) = names.Read(node, "otherNames", "coating resin");
        var opens = node.Sourced("recoatOpensHours", Window);
        var closes = node.Sourced("recoatClosesHours", Window);
        if (node.IsSound && opens.Value.Late >= closes.Value.Early)
        {
            node.Wrong("recoatClosesHours", "the window closes before it has opened", "\"early\": 12, \"late\": 24");
        }

        return new(
            name,
            others,
            node.Sourced("ratio", inner => inner.Ratio("value")),
            node.Sourced("densityAGPerMl", TradeBounds.GramsPerMl, Density.FromGramsPerMillilitre),
            node.Sourced("densityBGPerMl", TradeBounds.GramsPerMl, Density.FromGramsPerMillilitre),
            node.Sourced("potLife", PotLife),
            node.Sourced("timesAtC", TradeBounds.RoomC, Temperature.FromCelsius),
            node.Sourced("workingMinutes", Minutes, minutes => TimeSpan.FromMinutes(minutes)),
            opens,
            closes,
            node.Sourced("handlingHours", Hours, hours => TimeSpan.FromHours(hours)),
            node.Sourced("fullCureDays", Days, days => TimeSpan.FromDays(days)),
            node.Sourced("cups", Cups),
            node.Sourced("floodFilmMm", TradeFilms.Scattered),
            node.Sourced("sealFilmMm", TradeFilms.Scattered),
            node.Sourced("sideFilmMm", TradeBounds.FilmMm, Length.FromMillimetres),
            node.Sourced("runOff", TradeFilms.RunOff));
    }

    private static SheetPotLife PotLife(TradeNode node) => new(
        TimeSpan.FromMinutes(node.Number("minutes", Minutes)),
        Mass.FromGrams(node.Number("sampleG", SampleG)),
        Temperature.FromCelsius(node.Number("atC", TradeBounds.RoomC)));

    private static TimeRange Window(TradeNode node)
    {
        var (early, late) = (node.Number("early", Hours), node.Number("late", Hours));
        if (node.IsSound && early > late)
        {
            node.Wrong("early", "it must not come after the late end", TradeBounds.Text(late));
        }

        return new(TimeSpan.FromHours(early), TimeSpan.FromHours(late));
    }

    private static SafeCups Cups(TradeNode node)
    {
        var (usual, warm) = (node.Number("safeMl", CupMl), node.Number("warmSafeMl", CupMl));
        if (node.IsSound && warm > usual)
        {
            node.Wrong("warmSafeMl", "a warm room asks for smaller cups, not larger ones", TradeBounds.Text(usual / 2));
        }

        var warmAbove = Temperature.FromCelsius(node.Number("warmAboveC", TradeBounds.RoomC));
        return new(Volume.FromMillilitres(usual), Volume.FromMillilitres(warm), warmAbove);
    }
}
