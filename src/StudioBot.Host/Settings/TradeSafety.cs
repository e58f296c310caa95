using StudioBot.Craft.Practice;

namespace StudioBot.Host.Settings;

/// <summary>Reads <c>safety.json</c>: one caution for every subject, none left out.</summary>
internal static class TradeSafety
{
    /// <summary>The cautions; none where a subject lacks its line or has two.</summary>
    public static SafetyLines? Read(TradeNode file)
    {
        var lines = file.List("lines", Line);
        var sheetFirst = file.Sourced("sheetFirst", node => node.Text("value", "The product's sheet comes first."));
        if (!file.IsSound)
        {
            return null;
        }

        foreach (var subject in Enum.GetValues<SafetySubject>())
        {
            var count = lines.Count(line => line.Subject == subject);
            if (count != 1)
            {
                var name = TradeValues.Name(subject);
                var reason = $"the subject {name} has {(count == 0 ? "no line" : $"{count} lines")}";
                file.Wrong("lines", reason, $"one line with \"subject\": \"{name}\"");
            }
        }

        return file.IsSound ? new(lines, sheetFirst) : null;
    }

    private static SafetyLine Line(TradeNode node) => new(
        node.Choice<SafetySubject>("subject"),
        node.Text("line", "Dust mask on before the bag opens."),
        node.Text("word", "Dust mask."),
        node.Provenance());
}
