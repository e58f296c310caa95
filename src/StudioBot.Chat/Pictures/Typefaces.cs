using SkiaSharp;

namespace StudioBot.Chat.Pictures;

/// <summary>The letters that come with the program, read at the first picture: a machine without a screen has none.
/// </summary>
internal static class Typefaces
{
    private static readonly Lazy<SKTypeface> LazyRegular = new(() => Read("DejaVuSans.ttf"));
    private static readonly Lazy<SKTypeface> LazyBold = new(() => Read("DejaVuSans-Bold.ttf"));

    /// <summary>For most words.</summary>
    public static SKTypeface Regular => LazyRegular.Value;

    /// <summary>For titles.</summary>
    public static SKTypeface Bold => LazyBold.Value;

    private static SKTypeface Read(string name)
    {
        var assembly = typeof(Typefaces).Assembly;
        var resource = assembly.GetManifestResourceNames()
            .Single(one => one.EndsWith("." + name, StringComparison.Ordinal));
        using var stream = assembly.GetManifestResourceStream(resource);
        using var data = SKData.Create(stream);
        return SKTypeface.FromData(data)
            ?? throw new InvalidOperationException($"{name} is no font.");
    }
}
