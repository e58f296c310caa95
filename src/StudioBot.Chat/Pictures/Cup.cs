namespace StudioBot.Chat.Pictures;

/// <summary>A cup of a pour, or several that are alike.</summary>
/// <param name="Kind">What is in it.</param>
/// <param name="Name">base coat, lamp black, colour 3, activator.</param>
/// <param name="Amount">What to measure, with its unit: 40 ml, 12 × 40 ml.</param>
/// <param name="Share">How high it stands beside the fullest, above 0 to 1.</param>
/// <param name="Count">How many are alike.</param>
internal sealed record Cup(CupKind Kind, string Name, string Amount, double Share, int Count = 1);
