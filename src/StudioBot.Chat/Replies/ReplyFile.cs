namespace StudioBot.Chat.Replies;

/// <summary>A file that goes out with a reply.</summary>
public sealed record ReplyFile
{
    private const int Kilo = 1000;
    private const string Png = "image/png";

    private readonly Lazy<byte[]> content;

    /// <summary>A file that is there already.</summary>
    /// <param name="name">Its name, of letters, figures, points and dashes: usage-2026-11.csv.</param>
    /// <param name="mediaType">What it is: text/csv.</param>
    /// <param name="content">Its bytes; at least one.</param>
    public ReplyFile(string name, string mediaType, byte[] content)
        : this(name, mediaType, new Lazy<byte[]>(content))
    {
    }

    private ReplyFile(string name, string mediaType, Lazy<byte[]> content) =>
        (Name, MediaType, this.content) = (name, mediaType, content);

    /// <summary>A picture, which is drawn once somebody wants its bytes: who only wants the words never waits for it.
    /// </summary>
    /// <param name="name">Its name: piece-17.png.</param>
    /// <param name="draw">Draws it as PNG, from what was read before: the records are not looked at again.</param>
    public static ReplyFile Picture(string name, Func<byte[]> draw) => new(name, Png, new Lazy<byte[]>(draw));

    /// <summary>Its name, of letters, figures, points and dashes.</summary>
    public string Name { get; }

    /// <summary>What it is: text/csv.</summary>
    public string MediaType { get; }

    /// <summary>Its bytes; at least one.</summary>
    public byte[] Content => content.Value;

    /// <summary>Whether it is to be looked at where it arrives.</summary>
    public bool IsPicture => IsOne(MediaType);

    /// <summary>Its name and size in a few words: usage-2026-11.csv, 1.2 kB.</summary>
    public string InWords => $"{Name}, {(Content.Length < Kilo
        ? $"{Content.Length} bytes"
        : Content.Length < Kilo * Kilo
            ? Show.Number(Content.Length / (double)Kilo) + " kB"
            : Show.Number(Content.Length / (double)(Kilo * Kilo)) + " MB")}";

    /// <summary>Whether what has this media type is a picture.</summary>
    public static bool IsOne(string mediaType) => mediaType == Png;
}
