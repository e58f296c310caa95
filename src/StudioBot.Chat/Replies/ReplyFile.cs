namespace StudioBot.Chat.Replies;

/// <summary>A file that goes out with a reply.</summary>
/// <param name="Name">Its name, of letters, figures, points and dashes: usage-2026-11.csv.</param>
/// <param name="MediaType">What it is: text/csv.</param>
/// <param name="Content">Its bytes; at least one.</param>
public sealed record ReplyFile(string Name, string MediaType, byte[] Content)
{
    /// <summary>Its name and size in a few words: usage-2026-11.csv, 1.2 kB.</summary>
    public string InWords => $"{Name}, {(Content.Length < Kilo
        ? $"{Content.Length} bytes"
        : Content.Length < Kilo * Kilo
            ? Show.Number(Content.Length / (double)Kilo) + " kB"
            : Show.Number(Content.Length / (double)(Kilo * Kilo)) + " MB")}";

    private const int Kilo = 1000;
}
