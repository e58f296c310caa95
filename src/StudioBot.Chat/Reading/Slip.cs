namespace StudioBot.Chat.Reading;

/// <summary>A place in a message that can't stand as it is.</summary>
/// <param name="Start">Where the word at fault begins; behind the end where something is missing.</param>
/// <param name="Word">The word at fault as typed; empty where something is missing.</param>
/// <param name="Why">One line, without the word.</param>
/// <param name="Try">A message that works; none: an example of the command.</param>
internal sealed record Slip(int Start, string Word, string Why, string? Try = null)
{
    /// <summary>What each of several meanings would be typed as, by what stands on its button.</summary>
    public IReadOnlyList<(string Label, string Line)> Choices { get; init; } = [];
}
