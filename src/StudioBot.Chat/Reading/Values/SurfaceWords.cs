namespace StudioBot.Chat.Reading.Values;

/// <summary>Shapes, and what people call the things to be covered.</summary>
internal static class SurfaceWords
{
    private static readonly Dictionary<string, string> Shapes = new()
    {
        ["square"] = "square",
        ["squares"] = "square",
        ["rectangle"] = "rect",
        ["rectangular"] = "rect",
        ["round"] = "round",
        ["rounds"] = "round",
        ["circle"] = "round",
        ["circles"] = "round",
        ["circular"] = "round",
        ["disc"] = "round",
        ["discs"] = "round",
        ["disk"] = "round",
        ["disks"] = "round",
        ["coaster"] = "round",
        ["coasters"] = "round",
        ["oval"] = "oval",
        ["ovals"] = "oval",
        ["ellipse"] = "oval",
        ["hexagon"] = "hexagon",
        ["hexagons"] = "hexagon",
        ["hex"] = "hexagon",
        ["hexagonal"] = "hexagon",
    };

    private static readonly HashSet<string> Nouns =
        [.. "panel panels tile tiles board boards canvas canvases plate plates slab slabs tray trays".Split(' ')];

    private static readonly Dictionary<string, (double Width, double Height)> Sheets = new()
    {
        ["a3"] = (29.7, 42),
        ["a4"] = (21, 29.7),
        ["a5"] = (14.8, 21),
        ["a6"] = (10.5, 14.8),
    };

    /// <summary>Every word that says what kind of surface it is.</summary>
    public static IReadOnlySet<string> All { get; } = Shapes.Keys.Concat(Nouns).ToHashSet();

    /// <summary>The shape that this word says; none where it says none.</summary>
    public static string? Shape(string word) => Shapes.GetValueOrDefault(word);

    /// <summary>Whether it names a thing that may have any shape.</summary>
    public static bool IsNoun(string word) => Nouns.Contains(word);

    /// <summary>Whether it is said of one such thing, or of several.</summary>
    public static bool IsPlural(string word) => word[^1] == 's' && word != "canvas";

    /// <summary>The sheet of paper of this name (ISO 216), in cm; none where it is none.</summary>
    public static (double Width, double Height)? Sheet(string word) =>
        Sheets.TryGetValue(word, out var size) ? size : null;
}
