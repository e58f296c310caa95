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
    public override string Usage => "serve [--data DIR]...";

    /// <inheritdoc/>
    public override string Says => "The service: chat by Telegram until it is stopped.";

    /// <inheritdoc/>
    public override bool TakesSeveralFolders => true;

    /// <inheritdoc/>
    public override Task<ExitCode> Run(Invocation said, Workplace place, CancellationToken cancellation) => Serve(
        said.DataFolders.Count == 0
            ? [CheckSettings.Of(place.Machine, null)]
            : [.. said.DataFolders.Select(folder => CheckSettings.Of(place.Machine, folder))],
        place,
        cancellation);

    /// <summary>Serves the studios of these settings, one or several, until all have ended.</summary>
    /// <returns>Done where every one ended well, else how the first that did not has ended.</returns>
    public static async Task<ExitCode> Serve(
        IReadOnlyList<CheckedSettings> found, Workplace place, CancellationToken cancellation)
    {
        List<SettingTrouble> troubles = [.. found.SelectMany(one => one.Troubles).Distinct()];
        if (troubles.Count > 0)
        {
            return await Refused(
                place, SettingReport.Lines(troubles, TradeSettings.Load(Opening.ConfigFolder(place))));
        }

        List<StudioSettings> studios = [.. found.Select(one => one.Settings)];
        return Unfit(studios) is { } unfit
            ? await Refused(place, [unfit])
            : await Opening.WithPractice(place, practice => Serve(studios, place, practice, cancellation));
    }

    // What one service can't serve, in a line; none where it can.
    private static string? Unfit(List<StudioSettings> studios)
    {
        var of = (StudioSettings studio) => studios.Count > 1 ? $" for {studio.DataFolder}" : "";
        if (studios.FirstOrDefault(one => one.Token is null) is { } mute)
        {
            return $"No token{of(mute)}: name a file that holds it in {SettingKeys.TokenFile}, or set Telegram__Token.";
        }

        return studios.GroupBy(one => one.DataFolder).FirstOrDefault(same => same.Count() > 1) is { } twice
                ? $"{twice.Key} is named twice: a studio is served once."
            : studios.GroupBy(one => one.Token!.Reveal()).FirstOrDefault(same => same.Count() > 1) is { } shared
                ? $"{string.Join(" and ", shared.Select(one => one.DataFolder))} have one token: each studio has its "
                    + $"own, in its {SettingSources.DataFileName}."
            : null;
    }

    private static async Task<ExitCode> Refused(Workplace place, IEnumerable<string> lines)
    {
        foreach (var line in lines)
        {
            await place.Streams.Error.WriteLineAsync(line);
        }

        return ExitCode.Settings;
    }

    // A studio that can't be had, or whose token is refused, does not keep the others from being served.
    private static async Task<ExitCode> Serve(
        List<StudioSettings> studios, Workplace place, TradePractice practice, CancellationToken cancellation)
    {
        List<ServedStudio> served = [];
        try
        {
            List<ExitCode> codes = [];
            List<string> lost = [];
            foreach (var settings in studios)
            {
                if (ServedStudio.Open(settings, studios.Count > 1, place, practice, out var code) is { } studio)
                {
                    served.Add(studio);
                }
                else
                {
                    lost.Add(settings.DataFolder);
                }

                codes.Add(code);
            }

            if (served.Count > 0)
            {
                using var watch = Watching(studios[0], served, lost, place).Build();
                await watch.StartAsync(cancellation);
                codes.AddRange(await Task.WhenAll(served.Select(studio => studio.Run(cancellation))));
                await watch.StopAsync(CancellationToken.None);
            }

            return codes.FirstOrDefault(code => code != ExitCode.Done);
        }
        finally
        {
            served.ForEach(studio => studio.Dispose());
        }
    }

    // What looks after all of them: one port and one systemd.
    private static HostApplicationBuilder Watching(
        StudioSettings first, List<ServedStudio> served, List<string> lost, Workplace place)
    {
        var builder = Empty(first, place, null);
        builder.Services
            .AddSingleton(first)
            .AddSingleton(place.Time)
            .AddSingleton<Wellbeing>((served, lost) is ([var only], [])
                ? only.Vitals
                : new AllVitals(
                    [
                        .. lost.Select(folder => (folder, (Wellbeing)new LostVitals())),
                        .. served.Select(one => (one.Folder, one.Vitals)),
                    ]))
            .AddSingleton<ISystemdNotifier, SystemdNotifier>()
            .AddSingleton<Action<string>>(why => Environment.FailFast(why))
            .AddSingleton<Watchdog>()
            .AddSingleton<HealthPort>()
            .AddHostedService<Watch>();
        return builder;
    }

    private static HostApplicationBuilder Empty(StudioSettings settings, Workplace place, string? studio)
    {
        var builder = Microsoft.Extensions.Hosting.Host.CreateEmptyApplicationBuilder(
            new HostApplicationBuilderSettings { ContentRootPath = place.Machine.ProgramFolder });
        builder.Logging.AddProvider(new LineLog(place.Streams.Error, place.Time, settings.IsLogJson, studio));
        foreach (var framework in Frameworks)
        {
            builder.Logging.AddFilter<LineLog>(framework, LogLevel.Warning);
        }

        return builder;
    }

    /// <summary>The service of one studio with all it is made of.</summary>
    /// <param name="settings">Its settings.</param>
    /// <param name="place">Where it runs.</param>
    /// <param name="file">The studio.</param>
    /// <param name="practice">The trade's values.</param>
    /// <param name="studio">How its log names it; none where it is the only one.</param>
    internal static HostApplicationBuilder Built(
        StudioSettings settings, Workplace place, StudioFile file, TradePractice practice, string? studio = null)
    {
        var builder = Empty(settings, place, studio);
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
            .AddSingleton<Pace>()
            .AddSingleton<Outage>()
            .AddSingleton<Pulse>()
            .AddSingleton<Vitals>()
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
