using System.Net;
using System.Text;
using Microsoft.Extensions.Logging;
using StudioBot.Host.Logging;
using StudioBot.Host.Settings;

namespace StudioBot.Host.Health;

/// <summary>Tells this machine, and no other, how the service is: <c>/health/live</c> and <c>/health/ready</c> answer
/// 200, or 503 with the reason in one line.</summary>
internal sealed class HealthPort(StudioSettings settings, Wellbeing vitals, ILogger<HealthPort> log)
{
    /// <summary>Whether the service is alive: it does not hang.</summary>
    public const string Live = "/health/live";

    /// <summary>Whether it is ready: it is alive, its studio can be written, and the chat service answers.</summary>
    public const string Ready = "/health/ready";

    /// <summary>Where a service of these settings answers; none where it has no such port.</summary>
    public static Uri? AddressOf(StudioSettings settings, string path) =>
        settings.HealthPort == 0 ? null : new UriBuilder("http", "127.0.0.1", settings.HealthPort, path).Uri;

    /// <summary>Until it is stopped.</summary>
    public async Task Run(CancellationToken stop)
    {
        if (AddressOf(settings, "/") is not { } address)
        {
            return;
        }

        using var listener = new HttpListener();
        listener.Prefixes.Add(address.ToString());
        try
        {
            listener.Start();
        }
        catch (HttpListenerException taken)
        {
            log.LogWarning(
                Events.HealthPortTaken,
                "Nobody can ask at {Address} how the service is: {Why}. Name another port in {Key}, or 0 for none.",
                address,
                taken.Message,
                SettingKeys.HealthPort);
            return;
        }

        await using var ended = stop.Register(listener.Abort);
        while (true)
        {
            await Answer(await Asked(listener, stop));
        }
    }

    private static async Task<HttpListenerContext> Asked(HttpListener listener, CancellationToken stop)
    {
        try
        {
            return await listener.GetContextAsync();
        }
        catch (Exception) when (stop.IsCancellationRequested)
        {
            throw new OperationCanceledException(stop);
        }
    }

    private async Task Answer(HttpListenerContext asked)
    {
        var (status, line) = asked.Request.Url?.AbsolutePath switch
        {
            Live => State(vitals.Hang, "live"),
            Ready => State(vitals.Unready, "ready"),
            _ => (HttpStatusCode.NotFound, $"Ask for {Live} or {Ready}."),
        };
        using var response = asked.Response;
        response.StatusCode = (int)status;
        response.ContentType = "text/plain; charset=utf-8";
        try
        {
            await response.OutputStream.WriteAsync(Encoding.UTF8.GetBytes(line + "\n"));
        }
        catch (HttpListenerException gone)
        {
            log.LogDebug(Events.HealthAskerGone, "Who asked how the service is did not wait: {Why}", gone.Message);
        }
    }

    private static (HttpStatusCode Status, string Line) State(string? why, string well) =>
        why is null ? (HttpStatusCode.OK, well) : (HttpStatusCode.ServiceUnavailable, why);
}
