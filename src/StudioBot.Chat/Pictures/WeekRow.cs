namespace StudioBot.Chat.Pictures;

/// <summary>One material in the picture of a week.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Used">What was used of it, with its unit: 75 ml; empty where nothing was.</param>
/// <param name="Left">What is left of it, with its unit: 925 ml; empty where nothing is.</param>
/// <param name="Weeks">How many weeks that lasts at that use, 0 or more; none where nothing was used.</param>
/// <param name="Low">low, or low, ordered; empty where it is not.</param>
internal sealed record WeekRow(string Name, string Used, string Left, double? Weeks, string Low);
