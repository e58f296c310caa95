using StudioBot.Chat.Learning;
using StudioBot.Host.Settings;

namespace StudioBot.Host.Verbs;

/// <summary><c>studiobot backtest</c>: past estimates, the newest of each kind, against what happened.</summary>
internal sealed class BacktestVerb : Verb
{
    /// <inheritdoc/>
    public override string Word => "backtest";

    /// <inheritdoc/>
    public override string Usage => "backtest [--data DIR]";

    /// <inheritdoc/>
    public override string Says => "Every past estimate against what happened.";

    /// <inheritdoc/>
    public override Task<ExitCode> Run(Invocation said, Workplace place, CancellationToken cancellation)
    {
        var now = place.Time.GetUtcNow();
        return Opening.Looking(place, invented => Task.FromResult(invented.Look(studio =>
        {
            foreach (var line in Backtest.Of(studio, now))
            {
                place.Streams.Out.WriteLine(line);
            }

            return ExitCode.Done;
        })), CheckSettings.Of(place.Machine, said.Data).Settings.StudioPath);
    }
}
