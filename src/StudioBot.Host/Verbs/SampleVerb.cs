using StudioBot.Records.Sample;

namespace StudioBot.Host.Verbs;

/// <summary><c>studiobot sample DIR</c>: writes the invented studio into a folder.</summary>
internal sealed class SampleVerb : Verb
{
    /// <inheritdoc/>
    public override string Word => "sample";

    /// <inheritdoc/>
    public override string Usage => "sample DIR";

    /// <inheritdoc/>
    public override string Says => "Writes the invented studio into DIR.";

    /// <inheritdoc/>
    public override (int Fewest, int Most) Takes => (1, 1);

    /// <inheritdoc/>
    public override Task<ExitCode> Run(Invocation said, Workplace place, CancellationToken cancellation)
    {
        var path = Path.Combine(Path.GetFullPath(said.Words[0]), "studio.db");
        if (File.Exists(path))
        {
            place.Streams.Error.WriteLine($"A studio is there already: {path}. Name an empty folder.");
            return Task.FromResult(ExitCode.CannotWrite);
        }

        return Task.FromResult(Opening.StudioIn(path, place, file =>
        {
            file.Write(SampleStudio.WriteInto);
            place.Streams.Out.WriteLine($"The invented studio is in {path}.");
            return ExitCode.Done;
        }));
    }
}
