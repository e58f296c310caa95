using System.Net;
using System.Net.Sockets;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Logging.Abstractions;
using StudioBot.Host.Health;
using StudioBot.Host.Settings;
using StudioBot.Host.Tests.Support;
using StudioBot.Host.Turns;
using StudioBot.Records;

namespace StudioBot.Host.Tests.Health;

public sealed class HealthPortTests : IDisposable
{
    private readonly TempFolder folder = new();
    private readonly StudioFile file;
    private readonly Pulse pulse = new(TimeProvider.System);
    private readonly StudioSettings settings;
    private readonly CapturedLog log = new();
    private readonly LoggerFactory loggers;
    private readonly CancellationTokenSource stop = new();
    private readonly HttpClient http = new();

    public HealthPortTests()
    {
        file = StudioFile.Open(folder.StudioPath);
        settings = new StudioSettings(folder.Path, null, null) { HealthPort = FreePort.Any() };
        loggers = new LoggerFactory([log]);
    }

    public void Dispose()
    {
        http.Dispose();
        stop.Dispose();
        loggers.Dispose();
        file.Dispose();
        folder.Dispose();
    }

    [Fact]
    public async Task It_says_whether_the_service_lives_and_whether_it_is_ready()
    {
        var running = Port().Run(stop.Token);
        Assert.Equal((HttpStatusCode.OK, "live"), await Asked(HealthPort.Live));
        Assert.Equal(
            (HttpStatusCode.ServiceUnavailable, "the chat service has not answered yet"), await Asked(HealthPort.Ready));
        pulse.Polled();
        Assert.Equal((HttpStatusCode.OK, "ready"), await Asked(HealthPort.Ready));
        Assert.Equal(HttpStatusCode.NotFound, (await Asked("/studio.db")).Status);
        await Patience.End(running, stop);
    }

    [Fact]
    public async Task No_other_machine_can_ask()
    {
        var running = Port().Run(stop.Token);
        var others = (await Dns.GetHostAddressesAsync(Dns.GetHostName(), AddressFamily.InterNetwork))
            .Where(address => !IPAddress.IsLoopback(address));
        foreach (var address in others)
        {
            using var socket = new Socket(SocketType.Stream, ProtocolType.Tcp);
            await Assert.ThrowsAnyAsync<SocketException>(() => socket.ConnectAsync(address, settings.HealthPort));
        }

        Assert.Equal("127.0.0.1", HealthPort.AddressOf(settings, "/")!.Host);
        await Patience.End(running, stop);
    }

    [Fact]
    public async Task A_port_that_is_taken_is_said_and_the_service_goes_on()
    {
        using var taken = new TcpListener(IPAddress.Loopback, settings.HealthPort);
        taken.Start();
        await Port().Run(stop.Token);
        Assert.Contains("Name another port in Health:Port", log.Text, StringComparison.Ordinal);
    }

    private HealthPort Port() =>
        new(settings, Vitals(), loggers.CreateLogger<HealthPort>());

    private Vitals Vitals() => new(
        file,
        pulse,
        new Outage(NullLogger<Outage>.Instance),
        new ClockCheck(file, TimeProvider.System, loggers.CreateLogger<ClockCheck>()),
        TimeProvider.System);

    private async Task<(HttpStatusCode Status, string Line)> Asked(string path)
    {
        using var answer = await http.GetAsync(HealthPort.AddressOf(settings, path));
        return (answer.StatusCode, (await answer.Content.ReadAsStringAsync()).Trim());
    }
}
