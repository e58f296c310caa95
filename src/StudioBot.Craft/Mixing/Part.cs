namespace StudioBot.Craft.Mixing;

/// <summary>One part of a recipe.</summary>
/// <param name="Material">The material's name.</param>
/// <param name="Amount">How many parts, above zero. One part is the same millilitres as it is grams: 20 of medium by
/// volume to 2 of mica by mass is 2 g to 20 mL.</param>
/// <param name="By">What this part is counted in.</param>
public sealed record Part(string Material, double Amount, RatioBy By = RatioBy.Volume);
