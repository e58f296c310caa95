namespace StudioBot.Records.Stock;

/// <summary>That a material was used.</summary>
/// <param name="At">When.</param>
/// <param name="Units">How much, in millilitres, grams or pieces; below zero where some came back.</param>
public readonly record struct UseAt(DateTimeOffset At, double Units);
