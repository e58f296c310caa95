namespace StudioBot.Chat.Reading.Values;

/// <summary>A figure with whatever unit it was typed in.</summary>
/// <param name="Measure">What it measures.</param>
/// <param name="Value">In the measure's own unit; degrees as typed.</param>
/// <param name="Unit">The unit's short name.</param>
/// <param name="Typed">The number before the unit.</param>
internal sealed record AnyQuantity(Measure Measure, double Value, string Unit, double Typed);
