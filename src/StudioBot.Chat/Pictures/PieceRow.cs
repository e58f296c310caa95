namespace StudioBot.Chat.Pictures;

/// <summary>One piece among others.</summary>
/// <param name="Number">As written under it.</param>
/// <param name="Shelf">The shelf it lies on; empty where it lies on none.</param>
/// <param name="Size">30cm panel.</param>
/// <param name="Standing">How far it is, in words: 3–9 Dec, check now, cures to 4 Dec.</param>
/// <param name="Bars">What it did and will do, the earliest first; what lies over another comes after it.</param>
internal sealed record PieceRow(int Number, string Shelf, string Size, string Standing, IReadOnlyList<PieceBar> Bars);
