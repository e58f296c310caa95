namespace StudioBot.Host.Verbs;

/// <summary>All that the program does, in the order in which help shows it.</summary>
internal static class VerbList
{
    /// <summary>The verbs.</summary>
    public static IReadOnlyList<Verb> All { get; } =
    [
        new ChatVerb(),
        new ServeVerb(),
        new AskVerb(),
        new ReadVerb(),
        new SampleVerb(),
        new ImportVerb(),
        new BackupVerb(),
        new RestoreVerb(),
        new DemoVerb(),
        new RehearseVerb(),
        new BacktestVerb(),
        new ConfigVerb(),
        new SourcesVerb(),
        new MessagesVerb(),
        new HealthVerb(),
        new ReportVerb(),
        new HelpVerb(),
        new VersionVerb(),
    ];
}
