using StudioBot.Craft.Practice;
using StudioBot.Craft.Units;

namespace StudioBot.Host.Settings;

/// <summary>Reads <c>materials.json</c>: what a new studio starts with.</summary>
internal static class TradeMaterials
{
    private static readonly TradeBounds SpoonG = new(0.2, 25, 2);

    /// <summary>All materials.</summary>
    public static IReadOnlyList<StarterMaterial> Read(TradeNode file)
    {
        var names = new TradeNames();
        return file.List("materials", node => Material(node, names));
    }

    private static StarterMaterial Material(TradeNode node, TradeNames names)
    {
        var (name, others) = names.Read(node, "otherNames", "white");
        var kind = node.Choice<MaterialKind>("kind");
        var spoon = Perhaps(node, "gramsPerTeaspoon", key => node.Sourced(key, SpoonG, Mass.FromGrams));
        if (node.IsSound && spoon is not null && kind != MaterialKind.Powder)
        {
            node.Wrong("gramsPerTeaspoon", "only a powder is weighed by the spoon", "the key left out");
        }

        // What is counted in pieces has no density; everything else is converted by it.
        var density = kind == MaterialKind.Supply
            ? null
            : node.Sourced("densityGPerMl", TradeBounds.GramsPerMl, Density.FromGramsPerMillilitre);
        var solids = Perhaps(node, "solids", key => node.Sourced(key, TradeBounds.Share, share => share));
        var caution = Perhaps(node, "cautionAsBase", key => node.Sourced(key, Caution));
        return new(name, others, kind, density, solids, spoon, caution);
    }

    private static string Caution(TradeNode node) => node.Text("value", "It dries chalky and cracks.");

    private static Sourced<T>? Perhaps<T>(TradeNode node, string key, Func<string, Sourced<T>> read) =>
        node.Has(key) ? read(key) : null;
}
