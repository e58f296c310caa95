using System.Text.RegularExpressions;

namespace StudioBot.Host.Logging;

/// <summary>Takes tokens out of a text: whatever looks like one, wherever it came from.</summary>
internal static partial class Redaction
{
    /// <summary>The text with each token's secret part masked.</summary>
    public static string Of(string text) => Token().Replace(text, "$1:***");

    [GeneratedRegex(
        "((?:bot)?[0-9]{3,20})(?::|%3A)[A-Za-z0-9_-]{20,}",
        RegexOptions.NonBacktracking | RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Token();
}
