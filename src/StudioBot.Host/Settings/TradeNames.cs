namespace StudioBot.Host.Settings;

/// <summary>Names that people type: each must mean one thing.</summary>
internal sealed class TradeNames
{
    private readonly HashSet<string> taken = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Reads the name of an entry and its other words, and notes any that another entry has.</summary>
    public (string Name, IReadOnlyList<string> Others) Read(TradeNode node, string othersKey, string example)
    {
        var name = node.Text("name", example);
        var others = node.Words(othersKey);
        if (!taken.Add(name))
        {
            node.Wrong("name", $"“{name}” is taken already", "a name of its own");
        }

        foreach (var other in others.Where(other => !taken.Add(other)))
        {
            node.Wrong(othersKey, $"“{other}” is taken already", "each word under one name");
        }

        return (name, others);
    }
}
