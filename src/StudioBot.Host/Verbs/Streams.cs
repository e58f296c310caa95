using System.Text;

namespace StudioBot.Host.Verbs;

/// <summary>Where words come in and go out.</summary>
/// <param name="In">What is typed or piped.</param>
/// <param name="Out">Answers.</param>
/// <param name="Error">Troubles, and the log of the service.</param>
/// <param name="IsInteractive">Whether a person sits there: both in and out are a terminal.</param>
/// <param name="HasColour">Whether colour is shown and wanted.</param>
internal sealed record Streams(TextReader In, TextWriter Out, TextWriter Error, bool IsInteractive, bool HasColour)
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>The process's own, in UTF-8 whatever the machine's code page is.</summary>
    /// <param name="noColour">The value of <c>NO_COLOR</c>: anything but empty means none.</param>
    public static Streams OfProcess(string? noColour) => new(
        new StreamReader(Console.OpenStandardInput(), Utf8),
        new StreamWriter(Console.OpenStandardOutput(), Utf8) { AutoFlush = true },
        new StreamWriter(Console.OpenStandardError(), Utf8) { AutoFlush = true },
        !Console.IsInputRedirected && !Console.IsOutputRedirected,
        !Console.IsOutputRedirected && string.IsNullOrEmpty(noColour));
}
