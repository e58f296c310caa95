using System.Text.RegularExpressions;

namespace StudioBot.Host.Logging;

/// <summary>Takes tokens out of a text, whatever looks like one, and who logs in by an address.</summary>
internal static partial class Redaction
{
    /// <summary>The text with each token's secret part masked, and in an address what stands before the @.</summary>
    public static string Of(string text) =>
        MayHold(text) ? Login().Replace(Token().Replace(text, "$1:***"), "://***@") : text;

    // Most lines hold neither; a service that says nothing else never makes the patterns.
    private static bool MayHold(string text) =>
        text.Contains(':') || text.Contains("%3A", StringComparison.OrdinalIgnoreCase);

    [GeneratedRegex(
        "((?:bot)?[0-9]{3,20})(?::|%3A)[A-Za-z0-9_-]{20,}",
        RegexOptions.NonBacktracking | RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Token();

    [GeneratedRegex("://[^/@\\s]+@", RegexOptions.NonBacktracking | RegexOptions.CultureInvariant)]
    private static partial Regex Login();
}
