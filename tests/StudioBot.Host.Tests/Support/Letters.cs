using StudioBot.Host.Sending;

namespace StudioBot.Host.Tests.Support;

/// <summary>Letters for tests that do not care what they say.</summary>
internal static class Letters
{
    public static Letter Saying(string words) => new(words, words, []);

    public static string Text(string words) => LetterText.Of(Saying(words));
}
