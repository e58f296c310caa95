using StudioBot.Host.Settings;

namespace StudioBot.Host.Verbs;

/// <summary><c>studiobot config</c>: every setting in effect, then all that is wrong.</summary>
internal sealed class ConfigVerb : Verb
{
    /// <inheritdoc/>
    public override string Word => "config";

    /// <inheritdoc/>
    public override string Usage => "config [--data DIR]";

    /// <inheritdoc/>
    public override string Says => "Every setting with its origin, secrets masked, and what is wrong.";

    /// <inheritdoc/>
    public override Task<ExitCode> Run(Invocation said, Workplace place, CancellationToken cancellation)
    {
        var found = CheckSettings.Of(place.Machine, said.Data);
        var trade = TradeSettings.Load(Opening.ConfigFolder(place));
        foreach (var setting in found.InEffect)
        {
            place.Streams.Out.WriteLine($"{setting.Key,-20}  {setting.Shown}  ({setting.Origin})");
        }

        var troubles = SettingReport.Lines(found.Troubles, trade);
        foreach (var line in troubles)
        {
            place.Streams.Out.WriteLine(line);
        }

        return Task.FromResult(troubles.Count == 0 ? ExitCode.Done : ExitCode.Settings);
    }
}
