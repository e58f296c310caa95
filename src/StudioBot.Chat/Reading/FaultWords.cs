namespace StudioBot.Chat.Reading;

/// <summary>A fault and the phrases that people use for it: all words of one must occur.</summary>
internal sealed record FaultWords(string Name, IReadOnlyList<IReadOnlyList<string>> Phrases);
