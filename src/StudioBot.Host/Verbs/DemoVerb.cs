namespace StudioBot.Host.Verbs;

/// <summary><c>demo</c>: plays a month of the invented studio, fast and readable.</summary>
internal sealed class DemoVerb : Verb
{
    private const string Talk = "demo.talk";
    private const string UsualFolder = "demo-files";

    /// <inheritdoc/>
    public override string Word => "demo";

    /// <inheritdoc/>
    public override string Usage => "demo [--json] [--files DIR]";

    /// <inheritdoc/>
    public override string Says => "A month in an invented studio, played in seconds.";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Options => ["--json", "--files"];

    /// <inheritdoc/>
    public override Task<ExitCode> Run(Invocation said, Workplace place, CancellationToken cancellation) =>
        Opening.WithPractice(
            place, practice => Task.FromResult(RehearseVerb.Play(Lines(), practice, WithFolder(said, place), place)));

    // Beside where it is started, if that can be: a demonstration needs no place of its own.
    private static Invocation WithFolder(Invocation said, Workplace place)
    {
        if (said.Files is not null)
        {
            return said;
        }

        try
        {
            var folder = Directory.CreateDirectory(UsualFolder);
            var probe = Path.Combine(folder.FullName, ".probe");
            File.WriteAllBytes(probe, []);
            File.Delete(probe);
            return said with { Files = UsualFolder };
        }
        catch (Exception no) when (no is IOException or UnauthorizedAccessException)
        {
            place.Streams.Error.WriteLine($"No pictures are kept: {no.Message}  Name a folder:  --files DIR");
            return said;
        }
    }

    private static IEnumerable<string> Lines()
    {
        using var stream = typeof(DemoVerb).Assembly.GetManifestResourceStream(Talk)
            ?? throw new InvalidOperationException("The bundled month is not embedded.");
        using var reader = new StreamReader(stream);
        while (reader.ReadLine() is { } line)
        {
            yield return line;
        }
    }
}
