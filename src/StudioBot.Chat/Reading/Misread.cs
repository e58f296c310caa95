namespace StudioBot.Chat.Reading;

/// <summary>Why a message can't be read.</summary>
/// <param name="Word">The word at fault as typed; empty where something is missing.</param>
/// <param name="Why">One line, without the word.</param>
/// <param name="Try">A message that would work.</param>
public sealed record Misread(string Word, string Why, string Try)
{
    /// <summary>What each of several meanings would be typed as, by what stands on its button.</summary>
    public IReadOnlyList<(string Label, string Line)> Choices { get; init; } = [];
}
