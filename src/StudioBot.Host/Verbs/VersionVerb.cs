using System.Reflection;

namespace StudioBot.Host.Verbs;

/// <summary><c>studiobot --version</c>.</summary>
internal sealed class VersionVerb : Verb
{
    /// <summary>What it says.</summary>
    public static string Line { get; } = "studiobot " + typeof(VersionVerb).Assembly
        .GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion.Split('+')[0];

    /// <inheritdoc/>
    public override string Word => "version";

    /// <inheritdoc/>
    public override string Usage => "--version";

    /// <inheritdoc/>
    public override string Says => "The program's version.";

    /// <inheritdoc/>
    public override Task<ExitCode> Run(Invocation said, Workplace place, CancellationToken cancellation)
    {
        place.Streams.Out.WriteLine(Line);
        return Task.FromResult(ExitCode.Done);
    }
}
