using SkiaSharp;

namespace StudioBot.Host.Tests.Support;

/// <summary>Pictures to send.</summary>
internal static class Png
{
    /// <summary>A picture of nothing.</summary>
    public static byte[] Blank()
    {
        using var pixels = new SKBitmap(64, 48);
        using var data = pixels.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }
}
