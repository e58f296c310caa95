using StudioBot.Records.Pieces;

namespace StudioBot.Records.Stock;

/// <summary>Where a trail ends: a piece, whose it is, and what became of it.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Maker">The name of who poured it.</param>
/// <param name="Stage">How far it is.</param>
/// <param name="Since">Since when, UTC.</param>
/// <param name="Words">What was said with that: to whom it was sold; none where nothing was.</param>
public sealed record TrailEnd(int Number, string Maker, Stage Stage, DateTimeOffset Since, string? Words);
