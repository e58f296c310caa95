namespace StudioBot.Records.Stock;

/// <summary>An act that something went into a piece by.</summary>
/// <param name="ActId">The act.</param>
/// <param name="Number">The number of the piece.</param>
/// <param name="IsCoat">It was coated; else poured.</param>
public sealed record TrailPiece(long ActId, int Number, bool IsCoat);
