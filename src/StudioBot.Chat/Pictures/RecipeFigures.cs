namespace StudioBot.Chat.Pictures;

/// <summary>What the picture of a recipe shows: nothing of who saved it, and no prices.</summary>
/// <param name="Title">Its name and size.</param>
/// <param name="Line">What the shares are of.</param>
/// <param name="Parts">Its parts in its order; at least one.</param>
internal sealed record RecipeFigures(string Title, string Line, IReadOnlyList<RecipeShare> Parts);
