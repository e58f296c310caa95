using StudioBot.Host.Health;
using StudioBot.Host.Settings;

namespace StudioBot.Host.Verbs;

/// <summary><c>studiobot health</c>: asks the service on this machine whether it is ready.</summary>
internal sealed class HealthVerb : Verb
{
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(5);

    /// <inheritdoc/>
    public override string Word => "health";

    /// <inheritdoc/>
    public override string Usage => "health [--data DIR]";

    /// <inheritdoc/>
    public override string Says => "Whether the service on this machine is ready.";

    /// <inheritdoc/>
    public override async Task<ExitCode> Run(Invocation said, Workplace place, CancellationToken cancellation)
    {
        var settings = CheckSettings.Of(place.Machine, said.Data).Settings;
        if (HealthPort.AddressOf(settings, HealthPort.Ready) is not { } address)
        {
            await place.Streams.Error.WriteLineAsync($"{SettingKeys.HealthPort} is 0: the service can't be asked.");
            return ExitCode.Settings;
        }

        using var http = new HttpClient { Timeout = Longest };
        try
        {
            using var answer = await http.GetAsync(address, cancellation);
            var line = (await answer.Content.ReadAsStringAsync(cancellation)).Trim();
            await place.Streams.Out.WriteLineAsync(line);
            return answer.IsSuccessStatusCode ? ExitCode.Done : ExitCode.CheckFailed;
        }
        catch (Exception silent) when (silent is HttpRequestException or TaskCanceledException)
        {
            await place.Streams.Error.WriteLineAsync($"No service answers at {address}: {silent.Message}");
            return ExitCode.CheckFailed;
        }
    }
}
