using System.Text.RegularExpressions;

namespace StudioBot.Host.Logging;

/// <summary>Takes tokens out of a text, whatever looks like one, and who logs in by an address.</summary>
internal static partial class Redaction
{
    /// <summary>The text with each token's secret part masked, and in an address what stands before the @.</summary>
    public static string Of(string text) => Login().Replace(Token().Replace(text, "$1:***"), "://***@");

    [GeneratedRegex(
        "((?:bot)?[0-9]{3,20})(?::|%3A)[A-Za-z0-9_-]{20,}",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Token();

    [GeneratedRegex("://[^/@\\s]+@", RegexOptions.CultureInvariant)]
    private static partial Regex Login();
}
