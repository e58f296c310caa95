namespace StudioBot.Chat.Reading;

/// <summary>One thing understood, by its key and as text: <c>volume_ml</c>, 250.</summary>
public sealed record Meaning(string Key, string Value);
