using StudioBot.Craft.Practice;

namespace StudioBot.Host.Settings;

/// <summary>Reads <c>causes.json</c>: what goes wrong, and why.</summary>
internal static class TradeCauses
{
    /// <summary>All faults; the causes of each stand in the file the likeliest first, which is their rank.</summary>
    public static IReadOnlyList<Fault> Read(TradeNode file)
    {
        var names = new TradeNames();
        return file.List("faults", node => Fault(node, names));
    }

    private static Fault Fault(TradeNode node, TradeNames names)
    {
        var (name, words) = names.Read(node, "words", "cracks");
        var causes = node.List("causes", Cause);
        return new(name, words, [.. causes.Select((cause, place) => cause with { Rank = place + 1 })]);
    }

    private static Cause Cause(TradeNode node) => new(
        node.Text("why", "Too thick: the skin dries over wet paint."),
        node.Text("change", "Pour thinner."),
        Rank: 1,
        node.Choice<CauseSign>("sign"),
        node.Provenance());
}
