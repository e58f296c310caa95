namespace StudioBot.Chat.Pictures;

/// <summary>What the picture of a pour's cups shows.</summary>
/// <param name="Title">The surfaces and the technique.</param>
/// <param name="Line">What is mixed in all.</param>
/// <param name="Cups">From left to right, 1 to <see cref="CupsPicture.MostCups"/>.</param>
/// <param name="Names">The names of colours that share a cup's picture; empty where each has its own.</param>
internal sealed record CupsFigures(
    string Title, string Line, IReadOnlyList<Cup> Cups, IReadOnlyList<string> Names);
