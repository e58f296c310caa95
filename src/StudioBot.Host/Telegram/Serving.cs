using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using StudioBot.Chat;
using StudioBot.Craft.Practice;
using StudioBot.Host.Health;
using StudioBot.Host.Logging;
using StudioBot.Host.Sending;
using StudioBot.Host.Settings;
using StudioBot.Host.Turns;
using StudioBot.Records;

namespace StudioBot.Host.Telegram;

/// <summary>The service: polls, answers and sends side by side until it is stopped.</summary>
internal sealed class Serving(
    StudioSettings settings,
    StudioFile file,
    TradePractice practice,
    BotClients clients,
    Bell outboxBell,
    Pace pace,
    Pulse pulse,
    Outage outage,
    Counts counts,
    BackupLetter backups,
    IHostApplicationLifetime lifetime,
    TimeProvider time,
    ILoggerFactory loggers) : BackgroundService
{
    private readonly ILogger log = loggers.CreateLogger<Serving>();
    private readonly Backoff backoff = new(Random.Shared);
    private readonly Bell inboxBell = new(time);
    private readonly CallGuard calls = new(BotClients.LongestCall, time);

    /// <summary>Whether the service refused our token; there is nothing to do then but to stop.</summary>
    public bool TokenWasRefused { get; private set; }

    /// <inheritdoc/>
    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(stoppingToken);
        List<Task> others = [];
        try
        {
            await Serve(others, stop.Token);
            TokenWasRefused = true;
            lifetime.StopApplication();
        }
        finally
        {
            await stop.CancelAsync();
            await Ended(others);
        }
    }

    // Until the service refuses the token.
    private async Task Serve(List<Task> others, CancellationToken stop)
    {
        var arrival = new Arrival(clients.Calling, calls, backoff, time, loggers.CreateLogger<Arrival>());
        if (await arrival.Introduce(stop) is not { } me)
        {
            return;
        }

        // It answered: the first poll may be quiet for half a minute before it says as much.
        pulse.Polled();
        log.LogInformation(Events.Serving, "Serving as @{Name}, studio in {Folder}.", me.Username, settings.DataFolder);
        var catalogue = Catalogue.Find();
        var answering = new Answering(new Conversation(catalogue), practice, isSample: false, me.Username ?? "");
        var wire = new CountedWire(
            new TelegramWire(clients.Calling, calls, loggers.CreateLogger<TelegramWire>()), counts, time);
        var clerk = new Clerk(file, me.Id, answering, loggers.CreateLogger<Clerk>());
        var sender = new Sender(
            file, wire, backups, pace, backoff, outboxBell, time, loggers.CreateLogger<Sender>());
        var inbox = new InboxLoop(
            file, clerk, wire, inboxBell, sender, outage, counts, time, loggers.CreateLogger<InboxLoop>());
        others.AddRange(Others(inbox, sender, arrival, catalogue, stop));
        await Steady("Polling", Updates(inbox, wire).Run, stop);
    }

    private UpdateLoop Updates(InboxLoop inbox, IWire wire) => new(
        clients.Polling,
        new CallGuard(BotClients.LongestPoll, time),
        file,
        inbox.Receive,
        pulse,
        outage,
        wire,
        counts,
        backoff,
        time,
        loggers.CreateLogger<UpdateLoop>());

    private IReadOnlyList<Task> Others(
        InboxLoop inbox, Sender sender, Arrival arrival, Catalogue catalogue, CancellationToken stop)
    {
        var menus = CommandMenu.Requests(
            catalogue.Menu(ChatKind.Private, false), catalogue.Menu(ChatKind.Group, false));
        return
        [
            Steady("Answering", inbox.Run, stop),
            Steady("Sending", sender.Run, stop),
            Steady("Setting menus", inTime => arrival.SetMenus(menus, inTime), stop),
        ];
    }

    private Task Steady(string name, Func<CancellationToken, Task> loop, CancellationToken stop) => Task.Run(
        () => new Steadily(backoff, time, loggers.CreateLogger<Steadily>()).Run(name, loop, stop),
        CancellationToken.None);

    private static async Task Ended(IReadOnlyList<Task> tasks)
    {
        try
        {
            await Task.WhenAll(tasks);
        }
        catch (OperationCanceledException)
        {
            // That is how they end.
        }
    }
}
