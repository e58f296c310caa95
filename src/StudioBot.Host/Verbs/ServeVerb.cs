using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Hosting.Systemd;
using Microsoft.Extensions.Logging;
using StudioBot.Craft.Practice;
using StudioBot.Host.Health;
using StudioBot.Host.Logging;
using StudioBot.Host.Sending;
using StudioBot.Host.Settings;
using StudioBot.Host.Telegram;
using StudioBot.Host.Ticks;
using StudioBot.Host.Turns;
using StudioBot.Records;
using StudioBot.Records.Backups;

namespace StudioBot.Host.Verbs;

/// <summary><c>studiobot serve</c>: the service. It never falls back to a terminal.</summary>
internal sealed class ServeVerb : Verb
{
    // What still runs then is left: it goes again at the next start.
    private static readonly TimeSpan LongestEnd = TimeSpan.FromSeconds(8);

    // What they tell of their own beginning and end says nothing of the studio.
    private static readonly string[] Frameworks = ["Microsoft", "Quartz", "System"];

    /// <inheritdoc/>
    public override string Word => "serve";

    /// <inheritdoc/>
    public override string Usage => "serve [--data DIR]";

    /// <inheritdoc/>
    public override string Says => "The service: chat by Telegram until it is stopped.";

    /// <inheritdoc/>
    public override Task<ExitCode> Run(Invocation said, Workplace place, CancellationToken cancellation) =>
        Serve(CheckSettings.Of(place.Machine, said.Data), place, cancellation);

    /// <summary>Serves with these settings.</summary>
    public static async Task<ExitCode> Serve(CheckedSettings found, Workplace place, CancellationToken cancellation)
    {
        if (found.Troubles.Count > 0)
        {
            foreach (var line in SettingReport.Lines(found.Troubles, TradeSettings.Load(Opening.ConfigFolder(place))))
            {
                await place.Streams.Error.WriteLineAsync(line);
            }

            return ExitCode.Settings;
        }

        if (found.Settings.Token is null)
        {
            await place.Streams.Error.WriteLineAsync(
                $"No token: name a file that holds it in {SettingKeys.TokenFile}, or set Telegram__Token.");
            return ExitCode.Settings;
        }

        if (Opening.Open(found.Settings.StudioPath, place, out var code) is not { } file)
        {
            return code;
        }

        using (file)
        {
            try
            {
                return await Opening.WithPractice(
                    place, practice => Serve(found.Settings, place, file, practice, cancellation));
            }
            catch (UnwritableStudioException no)
                when (OpeningTrouble.Of(no, found.Settings.StudioPath) is { } trouble)
            {
                return Opening.Told(place, trouble);
            }
        }
    }

    private static async Task<ExitCode> Serve(
        StudioSettings settings,
        Workplace place,
        StudioFile file,
        TradePractice practice,
        CancellationToken cancellation)
    {
        Founding.Found(file, practice, place.Time.GetUtcNow());
        if (Founding.ClaimCode(file, place.Time.GetUtcNow()) is { } code)
        {
            await place.Streams.Error.WriteLineAsync(
                $"This studio has no steward yet. Within 15 minutes, send the bot in private:  join {code}");
        }

        using var host = Built(settings, place, file, practice).Build();
        var serving = host.Services.GetRequiredService<Serving>();
        await host.RunAsync(cancellation);
        if (!serving.TokenWasRefused)
        {
            return ExitCode.Done;
        }

        await place.Streams.Error.WriteLineAsync(
            "The chat service refuses the token. Ask it for the current one, and set that.");
        return ExitCode.Settings;
    }

    /// <summary>The service with all it is made of.</summary>
    internal static HostApplicationBuilder Built(
        StudioSettings settings, Workplace place, StudioFile file, TradePractice practice)
    {
        var builder = Microsoft.Extensions.Hosting.Host.CreateEmptyApplicationBuilder(
            new HostApplicationBuilderSettings { ContentRootPath = place.Machine.ProgramFolder });
        builder.Logging.AddProvider(new LineLog(place.Streams.Error, place.Time, settings.IsLogJson));
        foreach (var framework in Frameworks)
        {
            builder.Logging.AddFilter<LineLog>(framework, LogLevel.Warning);
        }

        BotClients.AddTo(builder.Services);
        builder.Services
            .AddSingleton(settings)
            .AddSingleton(file)
            .AddSingleton(practice)
            .AddSingleton(place.Time)
            .AddSingleton(new Bell(place.Time))
            .AddSingleton(new DueReminders(file, practice))
            .AddSingleton(new WallKeeper(file, practice))
            .AddSingleton<Nightly>()
            .AddSingleton<ClockCheck>()
            .AddSingleton<TickRuns>()
            .Configure<HostOptions>(options => options.ShutdownTimeout = LongestEnd)
            .AddSingleton<Counts>()
            .AddSingleton<Outage>()
            .AddSingleton<Pulse>()
            .AddSingleton<Vitals>()
            .AddSingleton<ISystemdNotifier, SystemdNotifier>()
            .AddSingleton<Action<string>>(why => Environment.FailFast(why))
            .AddSingleton<Watchdog>()
            .AddSingleton<HealthPort>()
            .AddSingleton(BackupFolder.Of(settings.StudioPath))
            .AddSingleton(new BackupCopy(settings.BackupCommand, BackupCopy.UsualLongest))
            .AddSingleton<BackupRound>()
            .AddSingleton<BackupLetter>()
            .AddSingleton<BotClients>()
            .AddSingleton<Serving>()
            .AddHostedService(services => services.GetRequiredService<Serving>());
        Schedule.AddTo(builder.Services, ZoneOf(file), place.Time.GetUtcNow());
        return builder;
    }

    private static TimeZoneInfo ZoneOf(StudioFile file) =>
        TimeZoneInfo.FindSystemTimeZoneById(file.Read(view => view.Studio.Settings()?.Zone) ?? "UTC");
}
