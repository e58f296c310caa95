namespace StudioBot.Chat.Replies;

/// <summary>One row of figures: what it is, and how much.</summary>
public sealed record Figure(string Name, string Value);
