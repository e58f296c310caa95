using StudioBot.Chat.Reading;

namespace StudioBot.Chat.Asking;

/// <summary>The words of a message as typed, where an error must point at one of them.</summary>
internal static class TypedWords
{
    /// <summary>Runs of letters, as typed.</summary>
    public static IReadOnlyList<string> Of(Phrase said) => new string(
        [.. said.Typed.Select(sign => char.IsLetter(sign) ? sign : ' ')]).Split(' ', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>Whether a unit of this measure stands in it.</summary>
    public static bool HoldUnit(Phrase said, Measure measure) => Of(said).Any(word =>
        UnitWords.Of(word.ToLowerInvariant())?.Measure is { } found && (found == measure || found == Measure.Ounce));
}
