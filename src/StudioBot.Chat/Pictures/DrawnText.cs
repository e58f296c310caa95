using SkiaSharp;

namespace StudioBot.Chat.Pictures;

/// <summary>Words as they stand in a picture.</summary>
/// <param name="Words">What stands there.</param>
/// <param name="Box">Where its letters are, from the highest to the lowest, in pixels.</param>
/// <param name="Within">The room that was given to it.</param>
/// <param name="Lettering">How it is set.</param>
/// <param name="Ink">Its colour.</param>
internal sealed record DrawnText(string Words, SKRect Box, SKRect Within, Lettering Lettering, SKColor Ink);
