namespace StudioBot.Host.Verbs;

/// <summary><c>studiobot help</c>: what the program does.</summary>
internal sealed class HelpVerb : Verb
{
    private const int Column = 30;

    /// <inheritdoc/>
    public override string Word => "help";

    /// <inheritdoc/>
    public override string Usage => "help";

    /// <inheritdoc/>
    public override string Says => "This list; also --help.";

    /// <inheritdoc/>
    public override Task<ExitCode> Run(Invocation said, Workplace place, CancellationToken cancellation)
    {
        var to = place.Streams.Out;
        foreach (var verb in VerbList.All)
        {
            to.WriteLine($"{"studiobot " + verb.Usage,-Column}  {verb.Says}");
        }

        to.WriteLine();
        to.WriteLine("--data DIR names the data folder.");
        to.WriteLine("Settings: config/studiobot.json, settings.json in the data folder, environment, command line.");
        to.WriteLine("The token comes from Telegram__Token or the file in Telegram__TokenFile, never from here.");
        return Task.FromResult(ExitCode.Done);
    }
}
