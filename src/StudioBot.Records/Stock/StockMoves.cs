namespace StudioBot.Records.Stock;

/// <summary>What moved of a material in a time, in millilitres, grams or pieces.</summary>
/// <param name="Came">What came.</param>
/// <param name="Went">What went.</param>
public sealed record StockMoves(double Came, double Went);
