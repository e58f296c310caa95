using System.Globalization;
using StudioBot.Craft.Mixing;
using StudioBot.Craft.Surfaces;
using StudioBot.Craft.Units;

namespace StudioBot.Craft.Tests.Whole;

/// <summary>The inputs of a check row: <c>key=value</c> split by <c>;</c>, lists inside a value by <c>|</c>.</summary>
public sealed class Inputs(string given)
{
    private readonly Dictionary<string, string> values = given.Split(';')
        .Select(pair => pair.Split('=', 2))
        .ToDictionary(pair => pair[0], pair => pair[1]);

    /// <summary>Whether this key is given.</summary>
    public bool Has(string key) => values.ContainsKey(key);

    /// <summary>The words of a value; a key that isn't given is an exception, so the row fails.</summary>
    public string Text(string key) => values[key];

    /// <summary>The words of a list.</summary>
    public IReadOnlyList<string> Texts(string key) => Text(key).Split('|');

    /// <summary>A value as a number.</summary>
    public double Number(string key) => Parse(Text(key));

    /// <summary>A list of numbers.</summary>
    public IReadOnlyList<double> Numbers(string key) => [.. Texts(key).Select(Parse)];

    /// <summary>A ratio written 3:1.</summary>
    public MixRatio Ratio(string key, RatioBy by = RatioBy.Volume) =>
        new([.. Text(key).Split(':').Select(Parse)], by);

    /// <summary>The shape that <c>shape</c> and the sizes beside it describe.</summary>
    public Surface Surface() => Text("shape") switch
    {
        "round" => new Surface.Disc(Size("diameter")),
        "square" => new Surface.Panel(Size("a"), Size("a")),
        "rectangle" => new Surface.Panel(Size("a"), Size("b")),
        "ellipse" => new Surface.Oval(Size("a"), Size("b")),
        "hexagon" => new Surface.Hexagon(Size("across_flats")),
        var other => throw new FormatException($"No shape is called {other}."),
    };

    /// <summary>A number as these files write it.</summary>
    public static double Parse(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    private Length Size(string name) => Has(name + "_in")
        ? Length.FromInches(Number(name + "_in"))
        : Length.FromCentimetres(Number(name + "_cm"));
}
