namespace StudioBot.Host.Verbs;

/// <summary><c>demo</c>: plays a month of the invented studio, fast and readable.</summary>
internal sealed class DemoVerb : Verb
{
    private const string Talk = "demo.talk";

    /// <inheritdoc/>
    public override string Word => "demo";

    /// <inheritdoc/>
    public override string Usage => "demo [--json] [--pictures DIR]";

    /// <inheritdoc/>
    public override string Says => "A month in an invented studio, played in seconds.";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Options => ["--json", "--pictures"];

    /// <inheritdoc/>
    public override Task<ExitCode> Run(Invocation said, Workplace place, CancellationToken cancellation) =>
        Opening.WithPractice(
            place, practice => Task.FromResult(RehearseVerb.Play(Lines(), practice, said, place)));

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
