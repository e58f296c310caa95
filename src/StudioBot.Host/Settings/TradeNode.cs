using System.Text.Json;

namespace StudioBot.Host.Settings;

/// <summary>
/// One object of a settings file. Whoever reads it asks for its keys; what can't stand is noted and answered with a
/// stand-in, so that reading goes on to the next mistake. A stand-in never leaves the reader: one note bars the whole.
/// </summary>
internal sealed class TradeNode
{
    private readonly Dictionary<string, JsonElement> members = [];
    private readonly List<string> asked = [];
    private readonly TradePlace place;
    private readonly string path;

    // An object that isn't there is noted once, as itself; its keys are then not missed one by one.
    private readonly bool absent;
    private readonly int foundBefore;

    private TradeNode(TradePlace place, string path, JsonElement element)
    {
        this.place = place;
        this.path = path;
        foundBefore = place.Found;
        absent = element.ValueKind != JsonValueKind.Object;
        foreach (var member in absent ? Enumerable.Empty<JsonProperty>() : element.EnumerateObject())
        {
            if (!members.TryAdd(member.Name, member.Value))
            {
                place.Wrong(Path(member.Name), member.Value, "the key stands twice", "one of the two");
            }
        }
    }

    /// <summary>Reads an object and notes every key of it that nobody asked for.</summary>
    /// <param name="place">Where notes go.</param>
    /// <param name="path">The path of the object; empty for the whole file.</param>
    /// <param name="element">What stands there; undefined where that has been noted already.</param>
    /// <param name="read">Makes the value.</param>
    public static T Read<T>(TradePlace place, string path, JsonElement element, Func<TradeNode, T> read)
    {
        var node = new TradeNode(place, path, element);
        if (node.absent && element.ValueKind != JsonValueKind.Undefined)
        {
            const string example = """{ "value": 3, "provenance": "common practice" }""";
            place.Wrong(path.Length == 0 ? "the file" : path, element, "keys and values belong here", example);
        }

        var value = read(node);
        foreach (var (key, written) in node.members.Where(member => !node.asked.Contains(member.Key)))
        {
            place.Wrong(node.Path(key), written, "there is no such key", TradeNearest.To(key, node.asked));
        }

        return value;
    }

    /// <summary>Whether nothing of it was wrong so far: only then are its values worth comparing.</summary>
    public bool IsSound => !absent && place.Found == foundBefore;

    /// <summary>Whether the key stands there at all.</summary>
    public bool Has(string key)
    {
        asked.Add(key);
        return members.ContainsKey(key);
    }

    /// <summary>The value of a key that must stand there; undefined, and noted, where it doesn't.</summary>
    public JsonElement Needed(string key, string example)
    {
        if (!Has(key) && !absent)
        {
            Wrong(key, "it is missing", $"\"{key}\": {example}");
        }

        return members.GetValueOrDefault(key);
    }

    /// <summary>An object under this key.</summary>
    public T Object<T>(string key, Func<TradeNode, T> read) =>
        Read(place, Path(key), Needed(key, "{ … }"), read);

    /// <summary>A list of objects under this key; at least one.</summary>
    public IReadOnlyList<T> List<T>(string key, Func<TradeNode, T> read)
    {
        var list = Needed(key, "[ { … } ]");
        if (list.ValueKind == JsonValueKind.Undefined)
        {
            return [];
        }

        if (list.ValueKind != JsonValueKind.Array || list.GetArrayLength() == 0)
        {
            Wrong(key, "a list of at least one belongs here", "[ { … } ]");
            return [];
        }

        return [.. list.EnumerateArray().Select((item, index) => Read(place, $"{Path(key)}[{index}]", item, read))];
    }

    /// <summary>Notes that what stands at this key can't.</summary>
    public void Wrong(string key, string reason, string example)
    {
        if (!absent)
        {
            place.Wrong(Path(key), members.GetValueOrDefault(key), reason, example);
        }
    }

    private string Path(string key) => path.Length == 0 ? key : $"{path}.{key}";
}
