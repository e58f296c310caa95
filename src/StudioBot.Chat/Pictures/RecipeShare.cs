namespace StudioBot.Chat.Pictures;

/// <summary>A part of a recipe.</summary>
/// <param name="Name">The material.</param>
/// <param name="Amount">How much of it, with its unit.</param>
/// <param name="Share">Which share of the mixture that is, 0 to 1; none where it is measured in another way.</param>
internal sealed record RecipeShare(string Name, string Amount, double? Share);
