using SkiaSharp;

namespace StudioBot.Chat.Pictures;

/// <summary>The colours of the pictures. Shapes take theirs from the palette of Okabe and Ito (Color Universal Design,
/// 2008; from memory), which people who see fewer colours tell apart; words are dark on light.</summary>
internal static class Ink
{
    /// <summary>What every picture lies on, so that it reads in a dark chat as in a light one.</summary>
    public static readonly SKColor Paper = SKColors.White;

    /// <summary>Words and outlines.</summary>
    public static readonly SKColor Words = new(0x1A, 0x1A, 0x1A);

    /// <summary>Words of less weight.</summary>
    public static readonly SKColor Quiet = new(0x4A, 0x4A, 0x4A);

    /// <summary>Lines that only guide the eye.</summary>
    public static readonly SKColor Guide = new(0xD9, 0xD9, 0xD9);

    /// <summary>The palette's orange.</summary>
    public static readonly SKColor Orange = new(0xE6, 0x9F, 0x00);

    /// <summary>The palette's sky blue.</summary>
    public static readonly SKColor Sky = new(0x56, 0xB4, 0xE9);

    /// <summary>The palette's bluish green.</summary>
    public static readonly SKColor Green = new(0x00, 0x9E, 0x73);

    /// <summary>The palette's yellow.</summary>
    public static readonly SKColor Yellow = new(0xF0, 0xE4, 0x42);

    /// <summary>The palette's blue.</summary>
    public static readonly SKColor Blue = new(0x00, 0x72, 0xB2);

    /// <summary>The palette's vermilion.</summary>
    public static readonly SKColor Vermilion = new(0xD5, 0x5E, 0x00);

    /// <summary>The palette's reddish purple.</summary>
    public static readonly SKColor Purple = new(0xCC, 0x79, 0xA7);
}
