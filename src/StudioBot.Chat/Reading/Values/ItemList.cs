namespace StudioBot.Chat.Reading.Values;

/// <summary>One or more amounts of materials, in the order said.</summary>
internal sealed record ItemList(IReadOnlyList<Item> Items);
