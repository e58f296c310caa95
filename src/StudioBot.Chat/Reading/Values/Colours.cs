namespace StudioBot.Chat.Reading.Values;

/// <summary>How many colours, and their names where they were said.</summary>
internal sealed record Colours(int Count, IReadOnlyList<string> Names);
